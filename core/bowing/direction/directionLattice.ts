import type { Lattice } from '../../search/lattice.ts';
import type { Direction } from '../strokes.ts';
import type { StrokeFacts } from './facts.ts';
import { BOW_TERMS, type BowTermKey, type BowTermWeights } from './terms/all.ts';
import type { BowTerm } from './terms/term.ts';
import { RUNS_OUT, SPLIT } from './weights.ts';

/** How one bow may be taken: which way it begins, and whether its slur is split in two bows. */
export interface Way {
  begins: Direction;
  split: boolean;
  ends: Direction;
}

const WHOLE: readonly Way[] = [{ begins: 'down', split: false, ends: 'down' }, { begins: 'up', split: false, ends: 'up' }];
const EITHER: readonly Way[] = [...WHOLE, { begins: 'down', split: true, ends: 'up' }, { begins: 'up', split: true, ends: 'down' }];
const KEYS = Object.keys(BOW_TERMS) as BowTermKey[];

export const waysOf = ({ notes }: StrokeFacts): readonly Way[] => (notes > 1 ? EITHER : WHOLE);

/** Costs by term of taking a bow one way; `split` and `runsOut` beside the terms of direction. Only costs above 0. */
export function wayCosts(stroke: StrokeFacts, way: Way, weights: BowTermWeights): [name: string, cost: number][] {
  const costs: [string, number][] = KEYS.map((key) => [key, weights[key] * ((BOW_TERMS[key] as BowTerm).stroke?.(stroke, way.begins) ?? 0)]);
  costs.push(['split', way.split ? SPLIT : 0], ['runsOut', RUNS_OUT * Math.max(0, (way.split ? stroke.bows / 2 : stroke.bows) - 1)]);
  return costs.filter(([, cost]) => cost > 0);
}

/** Costs by term of a bow that goes the same way as the one before ended; none where a sign asks for it. */
export function repeatCosts(before: StrokeFacts, stroke: StrokeFacts, weights: BowTermWeights): [name: string, cost: number][] {
  if (stroke.stroke.retake || before.stroke.hooked) return [];
  return KEYS.map((key): [string, number] => [key, weights[key] * ((BOW_TERMS[key] as BowTerm).repeated?.(before, stroke) ?? 0)]).filter(([, cost]) => cost > 0);
}

/** How much a retake that is asked for is not followed: enough that it always is where nothing forbids it. Chosen. */
const AGAINST_SIGN = 20;

/** What it costs to go on the other way; only where a retake asks for the same way. */
export const turnCost = (stroke: StrokeFacts): number => (stroke.stroke.retake && stroke.restBefore === 0 ? AGAINST_SIGN : 0);

const sum = (costs: readonly [string, number][]): number => costs.reduce((total, [, cost]) => total + cost, 0);

/** The bows as layers of `waysOf`, with what is marked or printed, or given by another voice, kept. */
export function directionLattice(facts: readonly StrokeFacts[], weights: BowTermWeights): Lattice {
  return {
    states: facts.map((own) => {
      const given = own.stroke.direction ?? own.together ?? null;
      return Float64Array.from(waysOf(own), (way) => (given !== null && given !== way.begins ? Infinity : sum(wayCosts(own, way, weights))));
    }),
    steps: facts.map((own, i) => {
      const before = facts[i - 1];
      if (!before) return new Float64Array(0);
      const [same, turn] = [sum(repeatCosts(before, own, weights)), turnCost(own)];
      return Float64Array.from(waysOf(before).flatMap((a) => waysOf(own).map((b) => (a.ends === b.begins ? same : turn))));
    }),
  };
}
