import { costsToEnd, type CostsToEnd } from './costsToEnd.ts';
import { type Lattice, type Path, pathCost } from './lattice.ts';

/**
 * The cheapest path through all layers, or null where none is allowed. Ties go to the lower state indices from the front.
 * Linear in the number of layers once the costs to the end are known. Oracle: brute force over all paths.
 */
export function cheapestPath(lattice: Lattice, toEnd: CostsToEnd = costsToEnd(lattice)): Path | null {
  if (lattice.states.length === 0) return { states: [], cost: 0 };
  let best = -1;
  let cost = Infinity;
  lattice.states[0]!.forEach((value, state) => {
    if (value + toEnd.beyond[0]![state]! < cost) {
      cost = value + toEnd.beyond[0]![state]!;
      best = state;
    }
  });
  if (best === -1) return null;
  const states = [best];
  for (let i = 1; i < lattice.states.length; i += 1) states.push(toEnd.next[i - 1]![states[i - 1]!]!);
  const total = pathCost(lattice, states);
  return total === Infinity ? null : { states, cost: total };
}
