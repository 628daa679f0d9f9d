import type { Instrument } from './instrument.ts';

/**
 * The full-size violin. Tuning: common practice. String length 325-330 mm, here 328 (svencino). Hair 645-650 mm and the end of the fingerboard
 * (270 mm of 328, so about 30 semitones): from memory. Hand: 1-4 is a perfect fourth (tnua), the fingers between at the middle of what is played.
 */
export const violin: Instrument = {
  name: 'violin',
  openStrings: [76, 69, 62, 55],
  stringNames: ['E', 'A', 'D', 'G'],
  stringLength: 328,
  bowHair: 650,
  bowShare: 1,
  top: 30,
  hand: [0, 1.5, 3.5, 5],
  positionsBy: 'letter',
  give: 1,
  sources: ['common-practice', 'svencino', 'tnua', 'from-memory'],
};
