import type { Instrument } from './instrument.ts';

/**
 * The orchestral three-quarter bass, 1040-1080 mm of string (jrank). Pitches sound an octave below the page. Hand 1-2-4 over a whole tone (simandl);
 * 3 lies with 4. Four strings without extension: another lowest string is a setting of the section. Bow share: chosen, not measured.
 */
export const doubleBass: Instrument = {
  name: 'double-bass',
  openStrings: [43, 38, 33, 28],
  stringNames: ['G', 'D', 'A', 'E'],
  stringLength: 1060,
  bowHair: 560,
  bowShare: 0.75,
  top: 30,
  hand: [0, 1, 2, 2],
  positionsBy: 'semitone',
  give: 0,
  sources: ['common-practice', 'jrank', 'simandl', 'from-memory', 'chosen'],
};
