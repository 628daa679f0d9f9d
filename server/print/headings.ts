import { xmlText } from '../../core/musicxml/escape.ts';
import { leftOf, type Margins } from '../../core/print/margins.ts';
import type { Mm, Paper } from '../../core/print/paper.ts';
import type { Face } from './faces.ts';
import { fitted } from './fitted.ts';
import type { Heading } from './order.ts';

/** Where words stand around the music. */
export interface Place {
  paper: Paper;
  margins: Margins;
  heading: Heading;
}

export const mm = (value: number): string => String(Math.round(value * 1000) / 1000);

interface Words {
  x: Mm;
  y: Mm;
  /** Height of the letters' body in mm. */
  size: Mm;
  face: Face;
  anchor?: 'start' | 'middle' | 'end';
}

const line = (text: string, { x, y, size, face, anchor = 'start' }: Words): string => (text ? `<text font-family="${face}" font-size="${mm(size)}" x="${mm(x)}" y="${mm(y)}"${anchor === 'start' ? '' : ` text-anchor="${anchor}"`}>${xmlText(text)}</text>` : '');

/** Words that get smaller where there is no room for them. */
const within = (text: string, width: Mm, words: Words): string => (text ? line(text, { ...words, size: fitted(text, words.face, width, { size: words.size, least: 0 }).size }) : '');

/** Edges of the music on a page, and its middle. */
function edges(page: number, { paper, margins }: Place): { left: Mm; right: Mm; middle: Mm; width: Mm } {
  const width = paper.width - margins.inner - margins.outer;
  const left = leftOf(page, margins);
  return { left, right: left + width, middle: left + width / 2, width };
}

/** Millimetres, and how much of the line a title may take. Chosen, not measured. */
const TITLE = { size: 8, least: 6.5, share: 0.86 };

const titleLines = (place: Place) => fitted(place.heading.title, 'Besley Medium', TITLE.share * edges(1, place).width, TITLE);

/** Room of the block over the first line of music, from the top margin: page number, title, instrument, seat, clear space. Chosen, not measured. */
export function titleHeight(place: Place): Mm {
  const { lines, size } = titleLines(place);
  return 3 + TITLE.size + (lines.length - 1) * 1.2 * size + 15;
}

function title(page: number, from: Mm, place: Place): { drawn: string; foot: Mm } {
  const { lines, size } = titleLines(place);
  const y = (i: number): Mm => from + TITLE.size + i * 1.2 * size;
  return { drawn: lines.map((text, i) => line(text, { x: edges(page, place).middle, y: y(i), size, face: 'Besley Medium', anchor: 'middle' })).join(''), foot: y(lines.length - 1) };
}

/** Title, instrument, reader and composer over the first line of music. */
export function titleBlock(page: number, place: Place): string {
  const { margins, heading } = place;
  const { left, right, width } = edges(page, place);
  const { drawn, foot } = title(page, margins.top + 3, place);
  return (
    drawn +
    within(heading.instrument, 0.48 * width, { x: left, y: foot + 7, size: 5, face: 'Besley Bold' }) +
    within(heading.seat, 0.48 * width, { x: left, y: foot + 12, size: 3.9, face: 'Alegreya Sans' }) +
    within(heading.composer, 0.48 * width, { x: right, y: foot + 7, size: 4.2, face: 'Alegreya Sans', anchor: 'end' })
  );
}

/** What stands on a page before the music, where the music begins on the second so that it lies open. */
export function titlePage(place: Place): string {
  const { paper, heading } = place;
  const { middle, width } = edges(1, place);
  const { drawn, foot } = title(1, 0.3 * paper.height, place);
  const below = (text: string, down: Mm, size: Mm, face: Face): string => within(text, width, { x: middle, y: foot + down, size, face, anchor: 'middle' });
  return drawn + below(heading.composer, 12, 4.8, 'Alegreya Sans') + below(heading.instrument, 34, 7, 'Besley Bold') + below(heading.seat, 42, 4.8, 'Alegreya Sans');
}

/** Page number in the outer corner, right on odd pages; instrument and title beside it, but not on a page with the title over its music. */
export function runningHead(page: number, titled: boolean, place: Place): string {
  const { margins, heading } = place;
  const { left, right, middle, width } = edges(page, place);
  const y = margins.top + 3;
  const [inner, outer] = page % 2 ? [left, right] : [right, left];
  const [innerEnd, outerEnd] = page % 2 ? (['start', 'end'] as const) : (['end', 'start'] as const);
  const number = line(String(page), { x: outer, y, size: 4.6, face: 'Besley Medium', anchor: outerEnd });
  if (titled) return number;
  const instrument = heading.seat ? `${heading.instrument} · ${heading.seat}` : heading.instrument;
  return number + within(instrument, 0.28 * width, { x: inner, y, size: 3.9, face: 'Besley Medium', anchor: innerEnd }) + within(heading.title, 0.4 * width, { x: middle, y, size: 3.9, face: 'Besley Medium Italic', anchor: 'middle' });
}

/** At the foot: which edition this is, and a warning where the page is turned without a rest. */
export function footLine(page: number, quick: boolean, place: Place): string {
  const { paper, margins, heading } = place;
  const { right, middle, width } = edges(page, place);
  const y = paper.height - margins.bottom + 4;
  return within(heading.edition, 0.6 * width, { x: middle, y, size: 2.9, face: 'Alegreya Sans', anchor: 'middle' }) + (quick ? line('V. S.', { x: right, y, size: 4.2, face: 'Besley Medium Italic', anchor: 'end' }) : '');
}
