import type { WidthOf } from '../boxReader.ts';
import type { Box, Geometry } from '../geometry.ts';
import type { PlacedMarks } from './placeMarks.ts';
import { outline } from './skyline.ts';
import { wordsBeside } from './wordsBeside.ts';

/** A printed word, sign or bracket above the staff, and how far it is moved up and, where it would leave the page, to the left. */
export interface LiftedWord {
  name: string;
  /** Where it stands after it is moved. */
  box: Box;
  lift: number;
  back: number;
}

/** Outward from the staff: words, brackets of endings, tempi, letters. */
const LEVELS: Record<string, number> = { hairpin: 0, dynam: 0, dir: 0, pedal: 0, ending: 1, tempo: 2, reh: 3 };
/** What hangs on its place in the music and is not moved sideways. */
const FIXED = new Set(['hairpin', 'ending']);
/** Clear space above what is below it, and beside its neighbours. Staff spaces; chosen, not measured. */
const CLEAR = { below: 0.4, beside: 0.7 };

/**
 * Moves printed words above a staff, one by one, out of the way of notes, marks (`placed`), whatever else stands there (`others`) and each other, never
 * towards the staff; a text that would leave the page ends with the line. Brackets of endings stay at one height. In the order of the drawing.
 * Example: a word over which nothing stands has a lift of 0.
 */
export function liftWords(inner: string, geometry: Geometry, placed: PlacedMarks, others: readonly Box[], widthOf?: WidthOf): LiftedWord[] {
  const sky = outline(geometry.width, geometry.top, 'above');
  for (const { x0, x1, y0 } of [...geometry.near, ...others]) sky.paint(x0, x1, y0);
  for (const { x0, x1, y, height } of placed.signs) if (y < geometry.top) sky.paint(x0, x1, y - height);
  const words = wordsBeside(inner, 'high', widthOf).map(({ name, box }) => {
    const back = FIXED.has(name) ? 0 : Math.max(0, box.x1 - geometry.width);
    return { name, box: { ...box, x0: box.x0 - back, x1: box.x1 - back }, lift: 0, back };
  });
  const needed = ({ x0, x1, y1 }: Box) => Math.max(0, y1 - (sky.reach(x0 - CLEAR.beside, x1 + CLEAR.beside) - CLEAR.below));
  for (const level of [0, 1, 2, 3]) {
    const here = words.filter(({ name, box }) => LEVELS[name] === level && box.x1 > box.x0).sort((a, b) => a.box.x0 - b.box.x0);
    const together = level === LEVELS.ending ? Math.max(0, ...here.map(({ box }) => needed(box))) : null;
    for (const word of here) {
      word.lift = together ?? needed(word.box);
      word.box = { ...word.box, y0: word.box.y0 - word.lift, y1: word.box.y1 - word.lift };
      sky.paint(word.box.x0, word.box.x1, word.box.y0);
    }
  }
  return words;
}
