import type { BowTerm } from './term.ts';

/** A note much longer than those around it goes down. */
export const longBow: BowTerm = {
  name: 'longBow',
  unit: 'long up-bows among short ones',
  source: 'common practice, no source',
  because: 'the long note among short ones is down-bow',
  stroke: ({ outweighs }, direction) => (outweighs && direction === 'up' ? 1 : 0),
};
