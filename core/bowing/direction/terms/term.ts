import type { Direction } from '../../strokes.ts';
import type { StrokeFacts } from '../facts.ts';

/** One cost of a bowing, before it is weighed. */
export interface BowTerm {
  name: string;
  unit: string;
  /** Where the rule comes from. */
  source: string;
  /** Why the other way is better, as a player would say it. */
  because: string;
  stroke?(stroke: StrokeFacts, direction: Direction): number;
  /** A bow that goes the same way as the one before it. */
  repeated?(before: StrokeFacts, stroke: StrokeFacts): number;
}
