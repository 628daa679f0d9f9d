import type { HairAnswer, HairQuestion } from '../bowing/messages.ts';
import type { Run } from '../../core/matching/run.ts';
import type { Part } from '../../core/music/part.ts';

/** Another section's part of the same work, and what stands in it. */
export interface OtherPart extends Omit<HairQuestion, 'seat'> {
  id: string;
  name: string;
  music: Part;
}

export interface BesideQuestion {
  others: readonly OtherPart[];
}

/** How another section bows, and where it plays what this part does. */
export interface OtherBows {
  id: string;
  name: string;
  hair: HairAnswer;
  /** `a` is the other part, `b` this one. */
  same: readonly Run[];
}

export interface BesideAnswer {
  sections: OtherBows[];
  /** Music of this part that comes again in it: `a` before `b`. */
  again: Run[];
}
