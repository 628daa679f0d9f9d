import { BOW_TERMS, type BowTermKey, type BowTermWeights } from '../../../core/bowing/direction/terms/all.ts';
import type { BowTerm } from '../../../core/bowing/direction/terms/term.ts';
import type { Direction } from '../../../core/bowing/strokes.ts';
import type { BowLine } from './lines.ts';

const KEYS = Object.keys(BOW_TERMS) as BowTermKey[];
const WAYS: readonly Direction[] = ['down', 'up'];

/** Values of every term on every bow: down, up, and the same way as the bow before. */
interface Lesson {
  length: number;
  values: Float64Array;
  given: Int8Array;
}

export function lessonOf({ facts, given }: BowLine): Lesson {
  const values = new Float64Array(facts.length * KEYS.length * 3);
  facts.forEach((stroke, i) => KEYS.forEach((key, k) => {
    const term: BowTerm = BOW_TERMS[key];
    const at = (i * KEYS.length + k) * 3;
    WAYS.forEach((way, w) => (values[at + w] = term.stroke?.(stroke, way) ?? 0));
    values[at + 2] = i === 0 ? 0 : (term.repeated?.(facts[i - 1]!, stroke) ?? 0);
  }));
  return { length: facts.length, values, given: Int8Array.from(given, (way) => (way === null ? -1 : WAYS.indexOf(way))) };
}

/** Expected sum of each term over all bowings, likelier the cheaper; with `pinned` over those that keep to what is given. Also the log of their total weight. */
function expected({ length, values, given }: Lesson, weights: Float64Array, pinned: boolean): { sums: Float64Array; log: number } {
  const n = KEYS.length;
  const potential = new Float64Array(length * 3);
  for (let i = 0; i < length; i += 1) for (let w = 0; w < 3; w += 1) {
    let cost = 0;
    for (let k = 0; k < n; k += 1) cost += weights[k]! * values[(i * n + k) * 3 + w]!;
    potential[i * 3 + w] = pinned && w < 2 && given[i]! >= 0 && given[i] !== w ? 0 : Math.exp(-cost);
  }
  const forward = new Float64Array(length * 2);
  let log = 0;
  for (let i = 0; i < length; i += 1) {
    const same = potential[i * 3 + 2]!;
    for (let w = 0; w < 2; w += 1) forward[i * 2 + w] = potential[i * 3 + w]! * (i === 0 ? 1 : forward[(i - 1) * 2 + w]! * same + forward[(i - 1) * 2 + 1 - w]!);
    const total = forward[i * 2]! + forward[i * 2 + 1]!;
    log += Math.log(total);
    forward[i * 2]! /= total;
    forward[i * 2 + 1]! /= total;
  }
  const sums = new Float64Array(n);
  let [down, up] = [1, 1];
  for (let i = length - 1; i >= 0; i -= 1) {
    const [a, b] = [forward[i * 2]! * down, forward[i * 2 + 1]! * up];
    const same = potential[i * 3 + 2]!;
    const [d, u] = [potential[i * 3]! * down, potential[i * 3 + 1]! * up];
    let repeats = 0;
    if (i > 0) {
      const [fd, fu] = [forward[(i - 1) * 2]!, forward[(i - 1) * 2 + 1]!];
      const [kept, turned] = [fd * same * d + fu * same * u, fd * u + fu * d];
      repeats = kept / (kept + turned);
    }
    for (let k = 0; k < n; k += 1) {
      const at = (i * n + k) * 3;
      sums[k]! += (a * values[at]! + b * values[at + 1]!) / (a + b) + repeats * values[at + 2]!;
    }
    const [nextDown, nextUp] = [same * d + u, same * u + d];
    [down, up] = [nextDown / (nextDown + nextUp), nextUp / (nextDown + nextUp)];
  }
  return { sums, log };
}

/** Strength that pulls weights towards 0, and rounds over the data: chosen, not measured. */
const PULL = 0.5;
const ROUNDS = 400;

/**
 * Weights of at least 0 under which the given directions are likeliest (maximum likelihood of a chain, gradient steps with their own size a weight).
 * Nothing is left to chance, so the same lines give the same weights.
 */
export function train(lessons: readonly Lesson[]): BowTermWeights {
  const weights = new Float64Array(KEYS.length).fill(1);
  const size = new Float64Array(KEYS.length).fill(1e-6);
  for (let round = 0; round < ROUNDS; round += 1) {
    const gradient = weights.map((weight) => -PULL * weight);
    for (const lesson of lessons) {
      const [all, kept] = [expected(lesson, weights, false).sums, expected(lesson, weights, true).sums];
      gradient.forEach((_, k) => (gradient[k]! += all[k]! - kept[k]!));
    }
    gradient.forEach((value, k) => {
      size[k]! += value * value;
      weights[k] = Math.max(0, weights[k]! + (0.3 * value) / Math.sqrt(size[k]!));
    });
  }
  return Object.fromEntries(KEYS.map((key, k) => [key, weights[k]!])) as BowTermWeights;
}
