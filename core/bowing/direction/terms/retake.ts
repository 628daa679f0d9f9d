import type { BowTerm } from './term.ts';
import { isHookable } from '../hooks.ts';

/** Two bows the same way without a rest: the bow has to be lifted and brought back. */
export const retake: BowTerm = {
  name: 'retake',
  unit: 'retakes',
  source: 'E. Green, Orchestral Bowings and Routines, 1957, from memory',
  because: 'bows follow each other in turn, and there is no time to bring the bow back',
  repeated: (before, stroke) => (stroke.restBefore === 0 && !isHookable(before, stroke) ? 1 : 0),
};
