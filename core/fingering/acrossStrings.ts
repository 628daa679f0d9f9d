import type { Chain } from '../search/marginals.ts';
import type { Layer } from './layers.ts';

/** Natural logs of likelihood ratios: both notes on one string, the hand moved. Chosen, not measured. */
const ONE_STRING = 5;
const MOVED = 2;

/**
 * Adds to the log potentials of a chain that the bow rocks over the strings from layer `at` - 1 to layer `at`, single notes both, under a hand that stays.
 * `mayShare`: they may lie on one string. Example: after a stopped note, a note on the same string is e to the fifth times less likely.
 */
export function holdAcross(chain: Chain, layers: readonly Layer[], at: number, mayShare = false): void {
  const steps = chain.steps[at]!;
  const here = layers[at]!.states;
  layers[at - 1]!.states.forEach(([a], x) => here.forEach(([b], y) => {
    const step = x * here.length + y;
    if (!mayShare && a!.string === b!.string) steps[step]! -= ONE_STRING;
    if (a!.position !== b!.position) steps[step]! -= MOVED;
  }));
}
