import type { Term } from './term.ts';

/** Changes of string inside a slur, where the tone changes within one bow. */
export const slurredCrossing: Term = {
  name: 'slurred-crossing',
  unit: 'strings crossed inside a slur',
  source: 'one string for one phrase: common practice, no source',
  applies: ({ slurred }) => slurred,
  step: (_player, _step, a, b, timing) => (timing.slurred ? Math.abs(a.string - b.string) : 0),
};
