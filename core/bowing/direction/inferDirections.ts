import { differentPaths } from '../../search/differentPaths.ts';
import { type Direction, turned } from '../strokes.ts';
import { directionLattice, repeatCosts, turnCost, waysOf, wayCosts, type Way } from './directionLattice.ts';
import type { StrokeFacts } from './facts.ts';
import { BOW_TERMS, type BowTermKey, type BowTermWeights } from './terms/all.ts';
import { BOW_WEIGHTS } from './weights.ts';

/** One bow of a bowing. */
export interface BowedStroke {
  facts: StrokeFacts;
  direction: Direction;
  /** Its slur is played in two bows, the second the other way. */
  split: boolean;
  /** The same way as the bow before, without a rest: by a lift or on the same bow. */
  repeats: boolean;
  /** Costs it carries, by term, largest first. */
  costs: [name: string, cost: number][];
  /** Terms that this way spares, largest first: the reason for it. */
  spared: [name: string, cost: number][];
}

export interface Bowing {
  cost: number;
  /** What the cost is made of; adds up to it. */
  terms: Record<string, number>;
  strokes: BowedStroke[];
}

const larger = (a: [string, number], b: [string, number]): number => b[1] - a[1];

function strokeOf(facts: StrokeFacts, way: Way, before: { facts: StrokeFacts; way: Way } | null, weights: BowTermWeights): BowedStroke {
  const other: Way = { ...way, begins: turned(way.begins) };
  const repeats = before !== null && before.way.ends === way.begins;
  const joint = before === null ? [] : repeatCosts(before.facts, facts, weights);
  const turn: [string, number][] = before !== null && turnCost(facts) > 0 ? [['againstSign', turnCost(facts)]] : [];
  const costs = [...wayCosts(facts, way, weights), ...(repeats ? joint : turn)];
  const carried = new Set(costs.map(([name]) => name));
  const spared = [...wayCosts(facts, other, weights), ...(before && !repeats ? joint : [])].filter(([name]) => !carried.has(name));
  return { facts, direction: way.begins, split: way.split, repeats: repeats && facts.restBefore === 0, costs: costs.sort(larger), spared: spared.sort(larger) };
}

/**
 * The `count` cheapest bowings that differ in the way of some bow, cheapest first. Exact over down and up and over splitting each slur once;
 * directions that are marked or printed are kept. Deterministic; empty without bows. Oracle: brute force over all ways.
 * Example: a pick-up quarter before a measure of quarters gives up, down, up, down, up.
 */
export function inferDirections(facts: readonly StrokeFacts[], count: number, weights: BowTermWeights = BOW_WEIGHTS): Bowing[] {
  if (facts.length === 0) return [];
  const paths = differentPaths(directionLattice(facts, weights), (_layer, state) => state, count);
  return paths.map(({ states, cost }) => {
    const ways = states.map((state, i) => waysOf(facts[i]!)[state]!);
    const strokes = facts.map((own, i) => strokeOf(own, ways[i]!, i === 0 ? null : { facts: facts[i - 1]!, way: ways[i - 1]! }, weights));
    const terms: Record<string, number> = {};
    for (const stroke of strokes) for (const [name, value] of stroke.costs) terms[name] = (terms[name] ?? 0) + value;
    return { cost, terms, strokes };
  });
}

/** Why a bow goes this way, in a player's words. Example: an up-bow before the barline: "A phrase that begins on a weak beat begins up-bow." */
export function reasonOf({ facts, spared, repeats }: BowedStroke): string {
  if (facts.stroke.direction !== null) return 'It is marked so.';
  if (facts.together) return 'The other voice that moves with it goes this way.';
  const says = spared.slice(0, 2).flatMap(([name]) => (name in BOW_TERMS ? [BOW_TERMS[name as BowTermKey].because] : []));
  const text = says.length > 0 ? says.join('; ') : repeats ? 'the bows that follow fall better so' : 'it follows from the bows around it';
  return `${text[0]!.toUpperCase()}${text.slice(1)}.`;
}
