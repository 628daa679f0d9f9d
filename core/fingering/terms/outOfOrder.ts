import { THUMB } from '../frame.ts';
import type { Term } from './term.ts';

/** A higher finger that takes a lower place of the same string without the hand moving. */
export const outOfOrder: Term = {
  name: 'out-of-order',
  unit: 'crossed fingers',
  source: 'the hand; common practice, no source',
  step: (_player, step, a, b) => {
    if (step.mm > 0 || a.string !== b.string || a.finger === b.finger || a.finger === 0 || b.finger === 0 || a.finger === THUMB || b.finger === THUMB) return 0;
    return (b.above - a.above) * (b.finger - a.finger) > 0 ? 0 : 1;
  },
};
