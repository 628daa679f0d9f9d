/** The value below which `share` of them lie. */
export function at(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? NaN;
}

export const median = (values: readonly number[]): number => at(values, 0.5);

/** Several ways measured in turns, so that what else the machine does falls on all of them: `rounds` values of each, in its place. */
export async function inTurns(rounds: number, ways: readonly (() => Promise<number>)[]): Promise<number[][]> {
  const values = ways.map((): number[] => []);
  for (let round = 0; round < rounds; round += 1) {
    // Each round begins with another one: who comes after whom is not always the same.
    for (let turn = 0; turn < ways.length; turn += 1) {
      const way = (round + turn) % ways.length;
      values[way]!.push(await ways[way]!());
    }
  }
  return values;
}

/** Median of the ratios of values measured in the same round. */
export const ratio = (ours: readonly number[], theirs: readonly number[]): number => median(ours.map((value, round) => value / theirs[round]!));

export const say = (line: string): void => console.log(line);
