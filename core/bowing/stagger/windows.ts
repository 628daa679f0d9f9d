import { SAME_TIME } from './problem.ts';

/** Stretches of instants, none inside another, in order: first and last instant of each. */
export interface Windows {
  first: Int32Array;
  last: Int32Array;
  /** For each instant: the windows it lies in, from `from[i]` to `to[i]`; `to < from` where there is none. */
  from: Int32Array;
  to: Int32Array;
}

/**
 * Orders stretches and drops those that lie inside another, so that the windows an instant lies in are a contiguous run.
 * Invariant: two instants share a kept window exactly when they shared a given one. Source: none needed, it is an antichain of intervals.
 */
export function windowsOf(stretches: readonly (readonly [number, number])[], instants: number): Windows {
  const sorted = [...stretches].sort((a, b) => a[0] - b[0] || b[1] - a[1]);
  const kept: (readonly [number, number])[] = [];
  for (const stretch of sorted) if (kept.length === 0 || stretch[1] > kept[kept.length - 1]![1]) kept.push(stretch);
  const from = new Int32Array(instants);
  const to = new Int32Array(instants).fill(-1);
  for (let i = 0, low = 0, high = -1; i < instants; i++) {
    while (low < kept.length && kept[low]![1] < i) low++;
    while (high + 1 < kept.length && kept[high + 1]![0] <= i) high++;
    from[i] = low;
    to[i] = high;
  }
  return { first: Int32Array.from(kept, ([a]) => a), last: Int32Array.from(kept, ([, b]) => b), from, to };
}

/** Running sums. Example: `sumsOf([2, 3])` is [0, 2, 5]. */
export function sumsOf(values: ArrayLike<number>): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (let i = 0; i < values.length; i++) sums[i + 1] = sums[i]! + values[i]!;
  return sums;
}

/** For every instant the sum of what stands on the windows it lies in. Example: windows [0, 1] and [1, 2] with 2 and 3 give 2, 5, 3. */
export function sumOverWindows({ from, to }: Windows, perWindow: ArrayLike<number>): Float64Array {
  const sums = sumsOf(perWindow);
  return Float64Array.from(from, (first, i) => sums[to[i]! + 1]! - sums[first]!);
}

/** For every instant the stretch of those less than `seconds` after it. Example: times 0, 0.2, 0.25 and 0.25 s give [0, 1], [1, 2], [2, 2]. */
export function closerThan(times: readonly number[], seconds: number): [number, number][] {
  return times.map((time, i) => {
    let last = i;
    while (last + 1 < times.length && times[last + 1]! - time < seconds - SAME_TIME) last++;
    return [i, last];
  });
}

/** The runs of neighbouring instants of one subdivision. */
export function runsOf(subdivisions: readonly (string | number)[]): [number, number][] {
  const runs: [number, number][] = [];
  subdivisions.forEach((subdivision, i) => {
    const run = runs[runs.length - 1];
    if (run && subdivisions[run[1]] === subdivision) run[1] = i;
    else runs.push([i, i]);
  });
  return runs;
}
