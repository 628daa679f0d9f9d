import { PAPER } from '../../../engraving/sizes.ts';

/** Index of the first line of every page but the first: lines of these heights (staff spaces) as they fall on sheets; the first has its heading. */
export function pageTurns(heights: readonly number[], { page, heading }: { page: number; heading: number } = PAPER): number[] {
  const turns: number[] = [];
  let filled = heading;
  for (const [i, height] of heights.entries()) {
    if (i > 0 && filled + height > page) {
      turns.push(i);
      filled = 0;
    }
    filled += height;
  }
  return turns;
}
