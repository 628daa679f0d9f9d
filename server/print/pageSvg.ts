import { UNITS } from '../../core/engraving/geometry.ts';
import { xmlText } from '../../core/musicxml/escape.ts';
import { leftOf } from '../../core/print/margins.ts';
import type { Mm } from '../../core/print/paper.ts';
import { drawMarks } from './drawMarks.ts';
import { footLine, mm, type Place, runningHead, titleBlock, titlePage } from './headings.ts';
import { musicInText } from './musicInText.ts';
import { printable } from './printable.ts';
import { NUMBER, type SetPage, type SetSystem } from './setMusic.ts';

/** What all pages of a part share. */
export interface PageFrame extends Place {
  /** A staff space. */
  space: Mm;
  /** Number of the page the music begins on. */
  begins: number;
  /** Where the music begins below the top edge: on its first page, and on the others. */
  firstTop: Mm;
  top: Mm;
  /** Printed number of a measure by its ordinal. */
  numberOf(ordinal: number): string;
  /** Pages that are turned without a rest. */
  quick: ReadonlySet<number>;
  /** The engraver's music face, where a text has a sign of it. */
  musicFace: Buffer | null;
}

function system({ drawing, placed, words, lowered, first }: SetSystem, x: Mm, y: Mm, { space, numberOf, musicFace }: PageFrame): string {
  const { top } = drawing.geometry;
  const number = first > 1 ? `<text class="barno" font-family="Besley Medium" font-size="${NUMBER.size}" x="0" y="${mm(top - NUMBER.up)}">${xmlText(numberOf(first))}</text>` : '';
  return `<g class="line" data-first="${first}" transform="translate(${mm(x)} ${mm(y - top * space)}) scale(${space})"><g transform="scale(${1 / UNITS})">${musicInText(printable(drawing.inner, words, lowered), musicFace)}</g>${number}<g class="marks">${drawMarks(placed.signs)}</g></g>`;
}

/** Glyphs of the engraver's that systems share, each once. */
function glyphs(systems: readonly SetSystem[]): string {
  const all: Record<string, string> = Object.assign({}, ...systems.map(({ drawing }) => drawing.glyphs));
  return Object.entries(all).map(([id, shape]) => `<g id="${id}">${shape}</g>`).join('');
}

const sheet = ({ paper }: PageFrame, inner: string): string => `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(paper.width)}mm" height="${mm(paper.height)}mm" viewBox="0 0 ${mm(paper.width)} ${mm(paper.height)}">${inner}</svg>`;

/** One page of a part as SVG, in millimetres. `page` from 1. */
export function pageSvg({ systems, standing }: SetPage, page: number, frame: PageFrame): string {
  const { margins, space, begins, firstTop, top, quick } = frame;
  const titled = page === begins;
  const lines = systems.map((one, i) => system(one, leftOf(page, margins), (titled ? firstTop : top) + standing.tops[i]! * space, frame));
  return sheet(frame, `<defs>${glyphs(systems)}</defs>${runningHead(page, titled, frame)}${titled ? titleBlock(page, frame) : ''}${lines.join('')}${footLine(page, quick.has(page), frame)}`);
}

/** The page before the music, with the title and whose part it is. */
export const titleSvg = (frame: PageFrame): string => sheet(frame, titlePage(frame) + footLine(1, false, frame));
