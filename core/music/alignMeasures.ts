import { commonSubsequence } from './commonSubsequence.ts';
import type { Measure } from './part.ts';

/**
 * For each measure of `next` the index of its partner in `previous`, or undefined for an inserted one.
 * Measures with the same notes are paired by their longest common subsequence; between two such pairs, changed measures are paired where they share
 * most, in order.
 */
export function alignMeasures(next: readonly Measure[], previous: readonly Measure[]): (number | undefined)[] {
  const a = next.map(contentOf);
  const b = previous.map(contentOf);
  const partners: (number | undefined)[] = Array.from({ length: next.length });
  const pairs = commonSubsequence(a, b);
  let i = 0;
  let j = 0;
  for (const [endI, endJ] of [...pairs, [next.length, previous.length] as const]) {
    for (const [p, q] of pairChanged(next.slice(i, endI), previous.slice(j, endJ))) partners[i + p] = j + q;
    if (endI < next.length) partners[endI] = endJ;
    i = endI + 1;
    j = endJ + 1;
  }
  return partners;
}

/** Changed measures between two equal ones, at most so many squared; more are paired in order. Chosen, not measured. */
const COMPARED = 300;

function pairChanged(next: readonly Measure[], previous: readonly Measure[]): [number, number][] {
  if (next.length === 0 || previous.length === 0) return [];
  if (next.length === previous.length || next.length > COMPARED || previous.length > COMPARED) {
    return Array.from({ length: Math.min(next.length, previous.length) }, (_, i) => [i, i]);
  }
  const a = next.map(keysOf);
  const b = previous.map(keysOf);
  const width = b.length + 1;
  const best = new Float64Array((a.length + 1) * width);
  const gain = (i: number, j: number) => likeness(a[i] ?? [], b[j] ?? []);
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      best[i * width + j] = Math.max(best[(i + 1) * width + j] ?? 0, best[i * width + j + 1] ?? 0, gain(i, j) + (best[(i + 1) * width + j + 1] ?? 0));
    }
  }
  const pairs: [number, number][] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    const here = best[i * width + j] ?? 0;
    if (here === gain(i, j) + (best[(i + 1) * width + j + 1] ?? 0)) pairs.push([i++, j++]);
    else if (here === (best[(i + 1) * width + j] ?? 0)) i++;
    else j++;
  }
  return pairs;
}

/** Share of notes two measures have in common, 0.001 to 1: even a rewritten measure is rather paired than called new. */
function likeness(a: readonly string[], b: readonly string[]): number {
  const left = new Map<string, number>();
  for (const key of b) left.set(key, (left.get(key) ?? 0) + 1);
  let shared = 0;
  for (const key of a) {
    const count = left.get(key) ?? 0;
    if (count > 0) {
      shared++;
      left.set(key, count - 1);
    }
  }
  return 0.001 + shared / Math.max(1, a.length, b.length);
}

function keysOf(measure: Measure): string[] {
  return measure.notes.map(({ midi, onset, duration }) => `${midi ?? 'r'} ${onset} ${duration}`);
}

/** What makes two measures the same music; printed numbers and ids do not count. */
function contentOf(measure: Measure): string {
  return keysOf(measure).join(' ') + ` ${measure.length}`;
}
