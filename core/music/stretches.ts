/** Whole numbers in a row, ordinals of measures for one: first and last. */
export interface Stretch {
  from: number;
  to: number;
}

/** Whole numbers as stretches of neighbours, first to last, however often each is named. Example: 4, 1, 2 and 2 give 1 to 2 and 4 to 4. */
export function stretchesOf(numbers: Iterable<number>): Stretch[] {
  const stretches: Stretch[] = [];
  for (const number of [...numbers].sort((a, b) => a - b)) {
    const last = stretches.at(-1);
    if (last && number <= last.to + 1) last.to = number;
    else stretches.push({ from: number, to: number });
  }
  return stretches;
}
