import type { Term } from './term.ts';

/** One finger needs this long to lift and fall again: from memory, editable. */
const AGAIN = 0.15;

/** One finger for two different notes quicker than a finger beats twice. */
export const sameFingerAgain: Term = {
  name: 'same-finger-again',
  unit: 'share of 0.15 s that is lacking',
  source: 'finger rates; from memory',
  step: (_player, _step, a, b, timing) => (a.finger === 0 || a.finger !== b.finger || (a.string === b.string && a.above === b.above) ? 0 : Math.max(0, 1 - timing.available / AGAIN)),
};
