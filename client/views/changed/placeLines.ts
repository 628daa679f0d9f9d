import type { Measures } from '../../../core/matching/editions/carryMarks.ts';
import type { SystemRange } from '../../../core/engraving/systemRanges.ts';

/** The measures of all places as lines of at most `longest` measures, rising; a measure stands in one line alone. */
export function placeLines(ranges: readonly (Measures | null)[], longest: number): SystemRange[] {
  const lines: SystemRange[] = [];
  let last = 0;
  for (const range of ranges.filter((one) => one !== null).toSorted((a, b) => a.from - b.from)) {
    for (let first = Math.max(range.from, last + 1); first <= range.to; first = last + 1) {
      last = Math.min(range.to, first + longest - 1);
      lines.push({ first, last });
    }
  }
  return lines;
}

/** Which of the lines show a place. */
export const linesOfPlace = (lines: readonly SystemRange[], range: Measures | null): number[] => (range ? lines.flatMap(({ first, last }, i) => (first <= range.to && last >= range.from ? [i] : [])) : []);
