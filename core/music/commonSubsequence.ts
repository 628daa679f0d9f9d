import { firstIndex } from './firstIndex.ts';

/** Longest stretch between common ends that is compared cell by cell; beyond it only unique values pair. Chosen, not measured. */
const CELLS = 4_000_000;

/**
 * Longest common subsequence as index pairs, both rising.
 * Common ends are paired first. O(n m) time and memory for what is left between them; above `CELLS` only values that occur once in both are paired
 * (the longest rising run of them, patience order). Tie-break: the earlier pair.
 * Example: `commonSubsequence(['a', 'b', 'c'], ['a', 'c'])` is `[[0, 0], [2, 1]]`.
 */
export function commonSubsequence(a: readonly string[], b: readonly string[]): [number, number][] {
  let start = 0;
  while (start < a.length && start < b.length && a[start] === b[start]) start++;
  let end = 0;
  while (end < a.length - start && end < b.length - start && a[a.length - 1 - end] === b[b.length - 1 - end]) end++;
  const middle = between(a.slice(start, a.length - end), b.slice(start, b.length - end));
  const pairs: [number, number][] = Array.from({ length: start }, (_, i) => [i, i]);
  for (const [i, j] of middle) pairs.push([i + start, j + start]);
  for (let i = end; i > 0; i--) pairs.push([a.length - i, b.length - i]);
  return pairs;
}

function between(a: readonly string[], b: readonly string[]): [number, number][] {
  return a.length * b.length > CELLS ? byUniqueValues(a, b) : byTable(a, b);
}

function byTable(a: readonly string[], b: readonly string[]): [number, number][] {
  const width = b.length + 1;
  const best = new Uint32Array((a.length + 1) * width);
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      const skip = Math.max(best[(i + 1) * width + j] ?? 0, best[i * width + j + 1] ?? 0);
      best[i * width + j] = a[i] === b[j] ? (best[(i + 1) * width + j + 1] ?? 0) + 1 : skip;
    }
  }
  const pairs: [number, number][] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    if (a[i] === b[j]) pairs.push([i++, j++]);
    else if ((best[(i + 1) * width + j] ?? 0) >= (best[i * width + j + 1] ?? 0)) i++;
    else j++;
  }
  return pairs;
}

function byUniqueValues(a: readonly string[], b: readonly string[]): [number, number][] {
  const inB = singles(b);
  const candidates = [...singles(a)].flatMap(([value, i]): [number, number][] => {
    const j = inB.get(value);
    return j === undefined ? [] : [[i, j]];
  });
  candidates.sort(([i], [j]) => i - j);
  const tails: number[] = [];
  const previous: number[] = [];
  candidates.forEach(([, j], k) => {
    const low = firstIndex(tails.length, (at) => (candidates[tails[at] ?? 0]?.[1] ?? 0) >= j);
    previous[k] = low ? (tails[low - 1] ?? -1) : -1;
    tails[low] = k;
  });
  const pairs: [number, number][] = [];
  for (let k = tails.at(-1) ?? -1; k >= 0; k = previous[k] ?? -1) {
    const pair = candidates[k];
    if (pair) pairs.unshift(pair);
  }
  return pairs;
}

/** Values that occur once, with their index. */
function singles(values: readonly string[]): Map<string, number> {
  const found = new Map<string, number>();
  const twice = new Set<string>();
  values.forEach((value, i) => (found.has(value) ? twice.add(value) : found.set(value, i)));
  for (const value of twice) found.delete(value);
  return found;
}
