import { isOfTheBow, type MarkValue } from '../../music/mark.ts';
import { isInsideAlone, type Seats } from '../../music/seat.ts';
import type { Geometry } from '../geometry.ts';
import { halfWidthOf, heightOf, type Stroke } from './figures.ts';
import { glyphsOf, type Glyph } from './glyphOf.ts';
import { outline, type Outline } from './skyline.ts';

/** Form says the state: adopted heavy, proposed one even stroke, private smaller over a dotted line, aside struck through. */
export type MarkState = 'adopted' | 'proposed' | 'private' | 'aside';

/** Which lens of the spectacles is dark. */
export type Lens = 'both' | 'inside' | 'outside';

/** A mark to be drawn. `share`: how far into its note a bow change lies, 0 to 1. `rubs`: what a mark of kind "none" rubs out. */
export interface ShownMark {
  note: string;
  value: MarkValue;
  seats: Seats;
  state: MarkState;
  share?: number;
  rubs?: MarkValue;
  /** Stands below the staff whatever it is: on paper, what only inside players do. */
  below?: true;
}

export interface ShownFinding {
  note: string;
  rule: string;
  lens: Lens;
}

export interface PlacedSign {
  note: string;
  /** "finger:2", as the tests name it. */
  name: string;
  state: MarkState;
  stroke?: Stroke;
  words?: string;
  x: number;
  y: number;
  scale: number;
  /** What it covers: from `x0` to `x1`, and `height` upward from y. */
  x0: number;
  x1: number;
  height: number;
}

export interface PlacedMarks {
  signs: PlacedSign[];
  spectacles: (ShownFinding & { x: number; y: number })[];
  /** Outermost y that marks reach above and below. */
  top: number;
  bottom: number;
}

/** Height of the small sign of a reach beside its figure, how much room it needs, and how far from the figure it begins. Staff spaces. */
const REACH = 1.1;
const CLEAR = 0.3;
const BESIDE = 0.25;
const GAP = { note: 0.75, sign: 0.5 };
/** How far the tails of letters hang below the line words stand on. */
const TAIL = 0.45;

/** Name of a mark for tests and readers of the page. Example: `{ kind: 'finger', finger: 2 }` is "finger:2". */
export function markName(value: MarkValue): string {
  const [, detail] = Object.values(value) as unknown[];
  return detail === undefined ? value.kind : `${value.kind}:${String(detail)}`;
}

/** Inside players' own fingerings stand below, everything about the bow above. */
function isBelow({ value, seats, below }: ShownMark): boolean {
  if (below) return true;
  return isInsideAlone(seats) && !isOfTheBow(value);
}

function endOf(note: string, geometry: Geometry): number {
  const { x, measure } = geometry.notes[note]!;
  const later = Object.values(geometry.notes).filter((other) => other.x > x + 0.5).map((other) => other.x);
  const bar = geometry.measures.find(({ ordinal }) => ordinal === measure)?.x1 ?? geometry.width;
  return Math.min(bar, ...later);
}

function place(mark: ShownMark, glyph: Glyph, index: number, geometry: Geometry, sides: { above: Outline; below: Outline }, figures: Map<string, number>): PlacedSign {
  const { x: noteX } = geometry.notes[mark.note]!;
  const state = glyph.struck ? 'aside' : mark.state;
  const narrow = mark.seats !== 'all' && mark.value.kind === 'change';
  const scale = narrow ? 0.9 : 1;
  const name = markName(mark.value);
  const x = mark.share ? noteX + (endOf(mark.note, geometry) - noteX) * mark.share : noteX + index * 1.35;
  const below = isBelow(mark);
  const side = below ? `${mark.note} below` : mark.note;
  const outlined = below ? sides.below : sides.above;
  const beside = mark.value.kind === 'reach' ? figures.get(side) : undefined;
  if (glyph.stroke && beside !== undefined) {
    const [x0, x1] = [x + 0.75, x + 1.95];
    const reached = outlined.reach(x0 + BESIDE, x1);
    const free = below ? reached < beside - REACH - CLEAR : reached > beside + CLEAR;
    // Where a neighbour's figure stands there, the sign of a reach stands over its own figure.
    if (free) {
      outlined.paint(x0 + BESIDE, x1, below ? beside : beside - REACH);
      return { note: mark.note, name, state, stroke: glyph.stroke, x: x + 1.35, y: beside, scale: 0.85, x0, x1, height: REACH };
    }
  }
  const height = (glyph.stroke ? heightOf(glyph.stroke) : 1.4) * scale;
  const half = glyph.stroke ? halfWidthOf(glyph.stroke) * scale : 0.5;
  // Words that would leave the line end with it.
  const back = glyph.words ? Math.max(0, Math.min(x, x + glyph.words.length * 0.95 - geometry.width)) : 0;
  const width: [number, number] = glyph.words ? [x - 0.5 - back, x - back + glyph.words.length * 0.95] : [x - half - 0.15, x + half + 0.15];
  const first = !figures.has(side);
  const gap = first ? GAP.note : GAP.sign;
  let y: number;
  const tail = glyph.words ? TAIL : 0;
  if (below) {
    y = Math.max(sides.below.reach(...width), geometry.bottom) + gap + height;
    sides.below.paint(...width, y + tail);
  } else {
    y = Math.min(sides.above.reach(...width), geometry.top) - gap - tail;
    sides.above.paint(...width, y - height);
  }
  if (index === 0) figures.set(side, y);
  return { note: mark.note, name, state, ...(glyph.stroke ? { stroke: glyph.stroke } : {}), ...(glyph.words ? { words: glyph.words } : {}), x: glyph.words ? width[0] : x, y, scale, x0: width[0], x1: width[1], height };
}

/** Finds room for marks over (and under) one engraved system: outward from the note figure, bow sign, then words; spectacles outermost. */
export function placeMarks(geometry: Geometry, marks: readonly ShownMark[], findings: readonly ShownFinding[] = []): PlacedMarks {
  const sides = { above: outline(geometry.width, geometry.top, 'above'), below: outline(geometry.width, geometry.bottom, 'below') };
  for (const { x0, x1, y0, y1 } of geometry.near) {
    sides.above.paint(x0, x1, y0);
    sides.below.paint(x0, x1, y1);
  }
  const figures = new Map<string, number>();
  const here = marks.filter(({ note }) => geometry.notes[note]).map((mark) => ({ mark, glyphs: glyphsOf(mark.value, mark.rubs) }));
  here.sort((a, b) => a.glyphs[0]!.level - b.glyphs[0]!.level);
  const signs = here.flatMap(({ mark, glyphs }) => {
    const placed = place(mark, glyphs[0]!, 0, geometry, sides, figures);
    return [placed, ...glyphs.slice(1).map((glyph, i) => ({ ...placed, ...(glyph.stroke ? { stroke: glyph.stroke } : {}), x: placed.x + (i + 1) * 1.35, x0: placed.x0 + (i + 1) * 1.35, x1: placed.x1 + (i + 1) * 1.35 }))];
  });
  const seen = new Set<string>();
  const spectacles = findings
    .filter(({ note }) => geometry.notes[note] && !seen.has(note) && seen.add(note))
    .map((finding) => {
      const { x } = geometry.notes[finding.note]!;
      const y = Math.min(sides.above.reach(x - 1.9, x + 1.9), geometry.top) - 1.2;
      sides.above.paint(x - 1.9, x + 1.9, y - 0.7);
      return { ...finding, x, y };
    });
  return { signs, spectacles, top: sides.above.extreme(), bottom: sides.below.extreme() };
}
