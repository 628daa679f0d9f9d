import type { Instrument } from './instrument.ts';

/** The full-size cello, 685-700 mm of string (from memory). Closed hand a semitone a finger (davidoff). Bow share: chosen, not measured. */
export const cello: Instrument = {
  name: 'cello',
  openStrings: [57, 50, 43, 36],
  stringNames: ['A', 'D', 'G', 'C'],
  stringLength: 690,
  bowHair: 600,
  bowShare: 0.85,
  top: 32,
  hand: [0, 1, 2, 3],
  positionsBy: 'semitone',
  give: 1,
  sources: ['common-practice', 'davidoff', 'from-memory', 'chosen'],
};
