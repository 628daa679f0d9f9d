import { type Lattice, type Path, pathCost } from '../../../core/search/lattice.ts';

/** All paths by brute force, cheapest first: the oracle of the searches. */
export function everyPath(lattice: Lattice): Path[] {
  let paths: number[][] = [[]];
  for (const layer of lattice.states) paths = paths.flatMap((path) => Array.from(layer, (_, state) => [...path, state]));
  return paths.map((states) => ({ states, cost: pathCost(lattice, states) })).filter(({ cost }) => cost !== Infinity).sort((a, b) => a.cost - b.cost);
}

/** The least cost of any path, by trying every one to its end without leaving any out early. */
export function leastCost({ states, steps }: Lattice, layer = 0, from = -1, spent = 0): number {
  if (layer === states.length) return spent;
  let least = Infinity;
  states[layer]!.forEach((cost, state) => {
    const step = layer === 0 ? 0 : steps[layer]![from * states[layer]!.length + state]!;
    least = Math.min(least, leastCost({ states, steps }, layer + 1, state, spent + step + cost));
  });
  return least;
}
