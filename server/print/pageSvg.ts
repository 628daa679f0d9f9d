import { UNITS } from '../../core/engraving/geometry.ts';
import type { Mm, Paper } from '../../core/print/paper.ts';
import { xmlText } from '../../core/musicxml/escape.ts';
import { drawMarks } from './drawMarks.ts';
import type { Heading } from './order.ts';
import { musicInText } from './musicInText.ts';
import { printable } from './printable.ts';
import type { SetPage, SetSystem } from './setMusic.ts';

/** What all pages of a part share. */
export interface PageFrame {
  paper: Paper;
  /** A staff space. */
  space: Mm;
  heading: Heading;
  /** Where the music begins below the top edge: on the first page, and on the others. */
  firstTop: Mm;
  top: Mm;
  /** Printed number of a measure by its ordinal. */
  numberOf(ordinal: number): string;
  /** Pages that are turned without a rest. */
  quick: ReadonlySet<number>;
  /** The engraver's music face, where a text has a sign of it. */
  musicFace: Buffer | null;
}

const mm = (value: number): string => String(Math.round(value * 1000) / 1000);

interface Words {
  x: Mm;
  y: Mm;
  /** Height of the letters' body in mm. */
  size: Mm;
  face: string;
  anchor?: 'start' | 'middle' | 'end';
}

const line = (text: string, { x, y, size, face, anchor = 'start' }: Words): string => (text ? `<text font-family="${face}" font-size="${mm(size)}" x="${mm(x)}" y="${mm(y)}"${anchor === 'start' ? '' : ` text-anchor="${anchor}"`}>${xmlText(text)}</text>` : '');

function system({ drawing, placed, words, drop, first }: SetSystem, x: Mm, y: Mm, { space, numberOf, musicFace }: PageFrame): string {
  const { top } = drawing.geometry;
  const number = first > 1 ? `<text class="barno" font-family="Besley Medium" font-size="1.9" x="-0.8" y="${mm(top - 0.6)}" text-anchor="end">${xmlText(numberOf(first))}</text>` : '';
  return `<g class="line" data-first="${first}" transform="translate(${mm(x)} ${mm(y - top * space)}) scale(${space})"><g transform="scale(${1 / UNITS})">${musicInText(printable(drawing.inner, words, drop), musicFace)}</g>${number}<g class="marks">${drawMarks(placed.signs)}</g></g>`;
}

/** Instrument and page number, which stands in the outer corner: right on odd pages. */
function runningHead(page: number, { paper, heading }: PageFrame): string {
  const { side, top } = paper.margins;
  const y = top + 3;
  const [inner, outer] = page % 2 ? [side, paper.width - side] : [paper.width - side, side];
  const [innerEnd, outerEnd] = page % 2 ? (['start', 'end'] as const) : (['end', 'start'] as const);
  const number = line(String(page), { x: outer, y, size: 4.6, face: 'Besley Medium', anchor: outerEnd });
  if (page === 1) return number;
  const instrument = heading.seat ? `${heading.instrument} · ${heading.seat}` : heading.instrument;
  return number + line(instrument, { x: inner, y, size: 3.9, face: 'Besley Medium', anchor: innerEnd }) + line(heading.title, { x: paper.width / 2, y, size: 3.9, face: 'Besley Medium Italic', anchor: 'middle' });
}

function titleBlock({ paper, heading }: PageFrame): string {
  const { side, top } = paper.margins;
  return (
    line(heading.title, { x: paper.width / 2, y: top + 11, size: 8, face: 'Besley Medium', anchor: 'middle' }) +
    line(heading.instrument, { x: side, y: top + 18, size: 5, face: 'Besley Bold' }) +
    line(heading.seat, { x: side, y: top + 23, size: 3.9, face: 'Alegreya Sans' }) +
    line(heading.composer, { x: paper.width - side, y: top + 18, size: 4.2, face: 'Alegreya Sans', anchor: 'end' })
  );
}

/** Glyphs of the engraver's that systems share, each once. */
function glyphs(systems: readonly SetSystem[]): string {
  const all: Record<string, string> = Object.assign({}, ...systems.map(({ drawing }) => drawing.glyphs));
  return Object.entries(all).map(([id, shape]) => `<g id="${id}">${shape}</g>`).join('');
}

/** One page of a part as SVG, in millimetres. `page` from 1. */
export function pageSvg({ systems, standing }: SetPage, page: number, frame: PageFrame): string {
  const { paper, space, heading, firstTop, top } = frame;
  const begins = page === 1 ? firstTop : top;
  const lines = systems.map((one, i) => system(one, paper.margins.side, begins + standing.tops[i]! * space, frame));
  const foot = line(heading.edition, { x: paper.width / 2, y: paper.height - paper.margins.bottom + 4, size: 2.9, face: 'Alegreya Sans', anchor: 'middle' });
  const quickly = frame.quick.has(page) ? line('V. S.', { x: paper.width - paper.margins.side, y: paper.height - paper.margins.bottom + 4, size: 4.2, face: 'Besley Medium Italic', anchor: 'end' }) : '';
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(paper.width)}mm" height="${mm(paper.height)}mm" viewBox="0 0 ${mm(paper.width)} ${mm(paper.height)}"><defs>${glyphs(systems)}</defs>${runningHead(page, frame)}${page === 1 ? titleBlock(frame) : ''}${lines.join('')}${foot}${quickly}</svg>`;
}
