import type { WidthOf } from '../boxReader.ts';
import type { Box, Geometry } from '../geometry.ts';
import type { PlacedMarks } from './placeMarks.ts';
import { wordsBeside } from './wordsBeside.ts';

/** A printed dynamic, hairpin or word below the staff: where it stands after it is moved, and how far down that is. */
export interface LoweredWord {
  box: Box;
  drop: number;
}

/** Words nearer than this side by side are one thing, a hairpin with its dynamics or a word under them, and stay in line. Staff spaces; chosen, not measured. */
const TOGETHER = 3;
/** Clear space under a sign, and beside it. Staff spaces; chosen, not measured. */
const CLEAR = { under: 0.6, beside: 0.3 };

/**
 * Moves printed words below a staff down out of the way of the marks there, each with its neighbours and no further than it must. In the order of the
 * drawing. Example: where no mark stands below the staff every drop is 0.
 */
export function lowerWords(inner: string, { bottom }: Geometry, { signs }: PlacedMarks, widthOf?: WidthOf): LoweredWord[] {
  const words = wordsBeside(inner, 'low', widthOf);
  const below = signs.filter(({ y }) => y >= bottom);
  const needed = ({ x0, x1, y0 }: Box): number => Math.max(0, ...below.filter((sign) => sign.x1 > x0 - CLEAR.beside && sign.x0 < x1 + CLEAR.beside).map(({ y }) => y + CLEAR.under - y0));
  const drops = new Map<(typeof words)[number], number>();
  let group: typeof words = [];
  const settle = (): void => {
    const drop = Math.max(0, ...group.map(({ box }) => needed(box)));
    for (const word of group) drops.set(word, drop);
  };
  for (const word of words.filter(({ box }) => box.x1 > box.x0).sort((a, b) => a.box.x0 - b.box.x0)) {
    if (group.length && word.box.x0 - Math.max(...group.map(({ box }) => box.x1)) > TOGETHER) {
      settle();
      group = [];
    }
    group.push(word);
  }
  settle();
  return words.map((word) => {
    const drop = drops.get(word) ?? 0;
    return { drop, box: { ...word.box, y0: word.box.y0 + drop, y1: word.box.y1 + drop } };
  });
}
