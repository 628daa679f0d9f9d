import type { Term } from './term.ts';

/** Kinds in which the hand travels with nothing to hide it but the music around. */
const BARE = new Set(['shift-same-finger', 'shift-departing-finger', 'shift-arriving-finger', 'substitution']);
/** How much more a shift stands out in quiet music and less in loud. */
const BY_DYNAMIC: Readonly<Record<string, number>> = { ppp: 2, pp: 2, p: 1.5, mp: 1.2, f: 0.7, ff: 0.7, fff: 0.7 };

/** Shifts inside a slur, which neither a change of bow nor a rest, an open string or a finger that goes first covers. */
export const bareShift: Term = {
  name: 'bare-shift',
  unit: 'shifts inside a slur, doubled in pp, seven tenths in f',
  source: 'shifts go with the change of bow: common practice, no source; the factors by dynamic are chosen, not measured',
  applies: ({ slurred, rest }) => slurred && rest === 0,
  step: (_player, step, _a, _b, timing) => (timing.slurred && timing.rest === 0 && step.mm > 0 && BARE.has(step.kind) ? (BY_DYNAMIC[timing.dynamic ?? 'mf'] ?? 1) : 0),
};
