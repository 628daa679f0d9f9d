import { cheapestPath } from '../search/cheapestPath.ts';
import { detours } from '../search/detours.ts';
import type { Lattice, Path } from '../search/lattice.ts';
import type { Prepared } from './prepare.ts';

/** Fingerings of fewer notes differ in fewer, one in four; of many in so many: chosen, not measured. */
const MOST_APART = 3;
/** Of the professionals who hold one note so, the share below which what follows is hardly ever done; the later ones where too few ways are left. Chosen, not measured. */
const HARDLY_EVER = [0.02, 0.002, 0.0002];

/** States that differ only where an open string sounds, or only in the finger, are one way to play. */
function musicalClasses({ layers }: Prepared): Int16Array[] {
  return layers.map((layer) => {
    const known = new Map<string, number>();
    return Int16Array.from(layer.states, (state) => {
      const key = state.map((place) => `${place.string}${place.finger === 0 ? 'o' : place.position}`).join();
      return known.get(key) ?? known.set(key, known.size).get(key)!;
    });
  });
}

/** The lattice without what hardly any professional does, each step judged from where it begins; `first` stays whole. */
function plausible({ lattice, marginals }: Prepared, first: Path, share: number): Lattice {
  const states = [...lattice.states];
  states[0] = states[0]!.map((cost, s) => (s === first.states[0] || marginals.states[0]![s]! >= share ? cost : Infinity));
  const steps = lattice.steps.map((costs, i) => {
    if (i === 0) return costs;
    const [before, width] = [marginals.states[i - 1]!, lattice.states[i]!.length];
    const likely = marginals.steps[i]!;
    const kept = costs.slice();
    for (let a = 0; a < before.length; a += 1) {
      const least = share * before[a]!;
      for (let b = 0; b < width; b += 1) if (likely[a * width + b]! < least || before[a] === 0) kept[a * width + b] = Infinity;
    }
    const own = first.states[i - 1]! * width + first.states[i]!;
    kept[own] = costs[own]!;
    return kept;
  });
  return { states, steps };
}

/**
 * The best ways to play a prepared line, cheapest first, at most `count`: the cheapest of all, and beside it the cheapest through each other string or
 * place of the hand, none like another in all but a few notes. Where professionals alone are the judges, what hardly any of them does is left out.
 * Deterministic. Example: a scale differs from another by a shift of its own, not by one note taken elsewhere.
 */
export function waysToPlay(prepared: Prepared, count: number): Path[] {
  const { lattice, balance, layers, toEnd } = prepared;
  const first = cheapestPath(lattice, toEnd);
  if (first === null || count < 2) return first === null ? [] : [first];
  const classes = musicalClasses(prepared);
  const apart = Math.min(MOST_APART, Math.ceil(layers.length / 4));
  const beside = (among: Lattice): Path[] => detours(among, first, (layer, state) => classes[layer]![state]!, count - 1, apart);
  if (balance.rare === 0) return [first, ...beside(lattice)];
  let found: Path[] = [];
  for (const share of HARDLY_EVER) {
    found = beside(plausible(prepared, first, share));
    if (found.length === count - 1) break;
  }
  return [first, ...found];
}
