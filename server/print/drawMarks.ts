import { xmlText } from '../../core/musicxml/escape.ts';
import { SOLID, STROKES, isLettered } from '../../core/engraving/marks/figures.ts';
import type { PlacedSign } from '../../core/engraving/marks/placeMarks.ts';

const at = (value: number): string => String(Math.round(value * 100) / 100);

function shape({ stroke, words, x, y, scale }: PlacedSign): string {
  if (!stroke) return `<text font-family="Alegreya Sans Bold" font-size="1.9" x="${at(x)}" y="${at(y)}">${xmlText(words ?? '')}</text>`;
  if (isLettered(stroke)) return `<text font-family="Besley ExtraBold" font-size="${at(2.35 * scale)}" x="${at(x)}" y="${at(y)}" text-anchor="middle">${stroke}</text>`;
  const place = `transform="translate(${at(x)} ${at(y)}) scale(${scale})"`;
  const solid = SOLID[stroke];
  return solid ? `<path ${place} d="${solid}"/>` : `<path ${place} fill="none" stroke="#000" stroke-width="0.42" stroke-linecap="round" stroke-linejoin="round" d="${STROKES[stroke]}"/>`;
}

/** Marks in ink over one system, as the stand shows them; in staff spaces, each under its name and the id of its note. */
export const drawMarks = (signs: readonly PlacedSign[]): string => signs.map((sign) => `<g class="mark" data-mark="${xmlText(sign.name)}" data-on="${sign.note}">${shape(sign)}</g>`).join('');
