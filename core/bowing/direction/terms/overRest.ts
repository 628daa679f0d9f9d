import type { BowTerm } from './term.ts';

/** Quarters of rest from which a bow is brought back without a thought: chosen, not measured. */
const LONG = 1;

/** The same way again after a short rest: there is time, but the bow has to travel back. */
export const overRest: BowTerm = {
  name: 'overRest',
  unit: 'returns over a short rest',
  source: 'chosen, not measured',
  because: 'over a rest this short the bow goes on from where it is',
  repeated: (_before, { restBefore }) => (restBefore > 0 && restBefore < LONG ? 1 : 0),
};
