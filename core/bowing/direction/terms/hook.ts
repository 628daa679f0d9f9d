import type { BowTerm } from './term.ts';
import { isHookable } from '../hooks.ts';

/** A short note taken on the bow of the longer note before it. */
export const hook: BowTerm = {
  name: 'hook',
  unit: 'hooked pairs',
  source: 'E. Green, Orchestral Bowings and Routines, 1957, from memory',
  because: 'bows follow each other in turn, and a hooked pair takes care',
  repeated: (before, stroke) => (stroke.restBefore === 0 && isHookable(before, stroke) ? 1 : 0),
};
