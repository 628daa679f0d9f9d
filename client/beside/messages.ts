import type { SectionSettings } from '../../core/agreement/wire/http.ts';
import type { OtherSection } from '../../core/check/finding.ts';
import type { HairAnswer } from '../bowing/messages.ts';
import type { Run } from '../../core/matching/run.ts';

/** Another section's part of the same work, and what stands in it. */
export interface OtherPart extends OtherSection {
  id: string;
  settings: SectionSettings;
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
