import type { Aim, OpenStrings } from '../../core/fingering/aims.ts';
import type { FingeringFacts } from '../../core/fingering/explain/handFacts.ts';
import type { HandMoment } from '../../core/fingering/explain/handPath.ts';
import type { PlainFingering } from '../../core/fingering/output.ts';
import type { HandProfile } from '../../core/hand/reach.ts';
import type { Mark } from '../../core/music/mark.ts';
import type { Language } from '../words/language.ts';

/** A passage to be fingered, and what is settled already. */
export interface Question {
  /** First and last note. */
  from: string;
  to: string;
  aim: Aim;
  /** Pencilled marks: every fingering keeps to them. */
  pencilled: readonly Mark[];
  /** Marks in force, for the section's own fingering. */
  standing: readonly Mark[];
  openStrings: OpenStrings;
  hand: HandProfile | null;
  players: number;
  assumedTempo: number;
  /** The explanations are given in it. */
  language: Language;
}

/** What the fingerings under a passage are called, in their order. */
export const LETTERS = 'abcdefg';

/** A fingering as it hangs under the passage. */
export interface Offer {
  /** Who says so: the section's marks, the print, or the engine. */
  by: 'section' | 'print' | 'engine';
  /** Sparse: what a player needs to read. */
  marks: Mark[];
  facts: FingeringFacts;
  path: HandMoment[];
  /** As the engine gave it, for hearing. */
  fingering: PlainFingering;
  cost: number;
  /** Largest first, named as players would. */
  terms: { term: string; cost: number }[];
  /** What the hand does, a sentence a note. */
  steps: { note: string; name: string; text: string }[];
  totals: string;
  /** Beside the first one; empty on it. */
  beside: string[];
  /** Where a stretch passes the limit, and what this hand could play instead. */
  cautions: string[];
}

/** Two fingerings of the passage side by side, the earlier letter first. */
export interface Pair {
  a: number;
  b: number;
  /** Notes they play differently, in order. */
  differs: string[];
  /** Where they part and what each does there. */
  sentences: string[];
  /** Which costs more and by what; null where they cost the same. */
  costs: string | null;
}

export interface Offers {
  offers: Offer[];
  /** Every two of them. */
  pairs: Pair[];
  refusals: { note: string; text: string }[];
}
