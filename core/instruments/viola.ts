import type { Instrument } from './instrument.ts';

/** The viola of about 405-410 mm body, string length 370-375 mm (viola-stops). Bow share: chosen, not measured. The rest as on the violin. */
export const viola: Instrument = {
  name: 'viola',
  openStrings: [69, 62, 55, 48],
  stringNames: ['A', 'D', 'G', 'C'],
  stringLength: 375,
  bowHair: 640,
  bowShare: 0.95,
  top: 30,
  hand: [0, 1.5, 3.5, 5],
  positionsBy: 'letter',
  give: 1,
  sources: ['common-practice', 'viola-stops', 'from-memory', 'chosen'],
};
