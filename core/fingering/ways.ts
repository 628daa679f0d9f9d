import { cheapestPath } from '../search/cheapestPath.ts';
import { costsToEnd } from '../search/costsToEnd.ts';
import { detours } from '../search/detours.ts';
import { differentPaths } from '../search/differentPaths.ts';
import type { Lattice, Path } from '../search/lattice.ts';
import { positionNumber } from './positionNumber.ts';
import type { Prepared } from './prepare.ts';

/** So many notes or fewer: every way that is another somewhere counts. Chosen, not measured. */
const SHORT = 6;
/** In a longer line two fingerings are different where they differ in so many notes: chosen, not measured. */
const APART = 3;
/** Of the professionals who hold one note so, the share below which what follows is hardly ever done; the next where too few ways are left. Chosen, not measured. */
const HARDLY_EVER = [0.02, 0.002, 0.0002, 0];

/** States that differ only where an open string sounds, or only in the finger, are one way to play. */
function musicalClasses({ layers, request }: Prepared): Int16Array[] {
  return layers.map((layer) => {
    const known = new Map<string, number>();
    return Int16Array.from(layer.states, (state) => {
      const key = state.map((place) => `${place.string}${place.finger === 0 ? 'o' : positionNumber(request.instrument, place)}`).join();
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
      for (let b = 0; b < width; b += 1) if (likely[a * width + b]! < least) kept[a * width + b] = Infinity;
    }
    const own = first.states[i - 1]! * width + first.states[i]!;
    kept[own] = costs[own]!;
    return kept;
  });
  return { states, steps };
}

/**
 * The best ways to play a prepared line, cheapest first, at most `count`. Of a short line all that differ in string or place of the hand; of a longer one
 * the cheapest of all, and the cheapest through each other string or place that differ in three notes or more from those before. Where professionals alone
 * are the judges, what hardly any of them does is left out. Exact; deterministic. Example: two suggestions for a scale differ by a shift, not by one digit.
 */
export function waysToPlay(prepared: Prepared, count: number): Path[] {
  const { lattice, balance, toEnd } = prepared;
  const first = cheapestPath(lattice, toEnd);
  if (first === null || count < 2) return first === null ? [] : [first];
  const classes = musicalClasses(prepared);
  const classOf = (layer: number, state: number): number => classes[layer]![state]!;
  const among = (some: Lattice, end = costsToEnd(some)): Path[] => (lattice.states.length <= SHORT ? differentPaths(some, classOf, count, end) : [first, ...detours(some, first, classOf, count - 1, APART, end)]);
  if (balance.rare === 0) return among(lattice, toEnd);
  let found: Path[] = [];
  for (const share of HARDLY_EVER) {
    found = among(plausible(prepared, first, share));
    if (found.length === count) break;
  }
  return found;
}
