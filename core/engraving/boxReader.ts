import { UNITS, type Box } from './geometry.ts';
import type { Scanned } from './scan.ts';
import { boxesOf, textBox } from './shape.ts';

/** How wide a letter is to its size: tempi and letters are set in the broad heavy face. */
const BROAD = new Set(['tempo', 'reh']);
const LETTER = { broad: 0.66, plain: 0.52 };

/** How wide a text of a kind of word is, in the unit of `size`. */
export type WidthOf = (text: string, group: string, size: number) => number;

const estimated: WidthOf = (text, group, size) => text.length * size * (BROAD.has(group) ? LETTER.broad : LETTER.plain);

const sp = (value: string | undefined) => Number(value ?? 0) / UNITS;

/**
 * Reads, element after element of the engraver's SVG, the boxes it covers, in staff spaces. It remembers where a text began, since its pieces follow
 * one another. `group`: the kind of word or sign the element belongs to; `widthOf`: how wide texts really are, where it is known. Example: `const boxes = boxReader(); boxes(element, 'tempo')`.
 */
export function boxReader(widthOf: WidthOf = estimated): (element: Scanned, group: string | undefined) => Box[] {
  let line = { x: 0, y: 0, size: 2.25, anchor: undefined as string | undefined };
  return (element, group) => {
    if (element.tag === 'text') line = { x: sp(element.attributes.x), y: sp(element.attributes.y), size: line.size, anchor: element.attributes['text-anchor'] };
    const size = element.attributes['font-size'];
    if (size && size !== '0px') line.size = sp(size.replace('px', ''));
    if (!element.text) return boxesOf(element);
    const long = widthOf(element.text, group ?? '', line.size);
    const box = textBox(line.x, line.y, line.size, long, line.anchor);
    line.x += long;
    return [box];
  };
}
