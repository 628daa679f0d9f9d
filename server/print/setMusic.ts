import type { WidthOf } from '../../core/engraving/boxReader.ts';
import { brokenAt } from '../../core/engraving/broken.ts';
import type { Box, Geometry } from '../../core/engraving/geometry.ts';
import { lowerWords, type LoweredWord } from '../../core/engraving/marks/lowWords.ts';
import { placeMarks, type PlacedMarks, type ShownMark } from '../../core/engraving/marks/placeMarks.ts';
import { liftWords, type LiftedWord } from '../../core/engraving/marks/words.ts';
import { countRests, type Rested } from '../../core/engraving/rests.ts';
import type { SystemRange } from '../../core/engraving/systemRanges.ts';
import type { Part } from '../../core/music/part.ts';
import { type Block, layOnPages, type Sheet } from '../../core/print/pages.ts';
import { most, profileOf, type Profile } from '../../core/print/profile.ts';
import { type Standing, standOnPage } from '../../core/print/standing.ts';
import type { TurnRest } from '../../core/print/turns.ts';
import { engrave, type PrintedSystem } from './engraver.ts';
import { widthOf } from './faces.ts';
import { faceOf } from './printable.ts';

/** The measure number over the first clef of a line: how far over the staff, and how large. Staff spaces; chosen, not measured. */
export const NUMBER = { up: 1.8, size: 1.7 };

/** One line of a part, engraved, with its marks placed. */
export interface SetSystem extends SystemRange {
  drawing: PrintedSystem;
  placed: PlacedMarks;
  profile: Profile;
  /** Words above and below the staff, where they find room. */
  words: readonly LiftedWord[];
  lowered: readonly LoweredWord[];
}

export interface SetPage {
  systems: SetSystem[];
  standing: Standing;
}

export interface SetMusic {
  pages: SetPage[];
  /** Number of the page the music begins on. */
  begins: 1 | 2;
  musicFace: Buffer | null;
}

/** Where the first clef of a line reaches, with the measure number over it, which no word may stand in. */
function clefIn({ top, bottom }: Geometry, first: number): Box[] {
  const clef = { x0: 0, x1: 3, y0: top - 1.6, y1: bottom + 1.6 };
  return first > 1 ? [clef, { x0: 0, x1: 3.6, y0: top - NUMBER.up - NUMBER.size, y1: top - NUMBER.up }] : [clef];
}

function dressed(drawing: PrintedSystem, range: SystemRange, marks: readonly ShownMark[]): SetSystem {
  const { geometry } = drawing;
  const placed = placeMarks(geometry, marks);
  const clef = clefIn(geometry, range.first);
  const widthIn: WidthOf = (text, name, size) => widthOf(text, faceOf(name), size);
  const words = liftWords(drawing.inner, geometry, placed, clef, widthIn);
  const lowered = lowerWords(drawing.inner, geometry, placed, widthIn);
  return { ...range, drawing, placed, words, lowered, profile: profileOf(geometry, placed, [...words, ...lowered], clef) };
}

/** Clef and key at the beginning of a line, in staff spaces. About as the engraver sets them. */
const leadOf = (fifths: number | null): number => 4 + Math.abs(fifths ?? 0);

/** Heights are compared in half spaces, so that lines of about one height count as one. */
const rounded = (value: number): number => Math.ceil(value * 2) / 2;

function blocksOf(line: SetSystem, part: Part, spans: Rested['spans'], rests: ReadonlyMap<number, TurnRest>): Block[] {
  const { geometry } = line.drawing;
  const at = new Map(geometry.measures.map((measure) => [measure.ordinal, measure]));
  const blocks: Block[] = [];
  for (let ordinal = line.first; ordinal <= line.last; ) {
    const last = Math.min(line.last, ordinal + (spans.get(ordinal) ?? 1) - 1);
    const [x0, x1] = [at.get(ordinal)?.x0 ?? 0, at.get(last)?.x1 ?? 0];
    const { up, down } = line.profile;
    blocks.push({ first: ordinal, last, width: x1 - x0, lead: ordinal === line.first ? 0 : leadOf(part.measures[ordinal - 1]!.fifths), up: rounded(most(up, x0, x1)), down: rounded(most(down, x0, x1)), staff: geometry.bottom - geometry.top, rest: rests.get(last)! });
    ordinal = last + 1;
  }
  return blocks;
}

/** Tried one after another: how much higher than it is a page is taken to be. Chosen, not measured. */
const NESTLING = [1.12, 1.05, 1, 0.94, 0.85, 0.7];

const fits = (page: SetPage, height: number): boolean => page.systems.length === 1 || page.standing.needed <= height;

/**
 * Sets a part on pages: measured once as its notes come, then laid on lines and pages, then engraved line by line.
 * `rests`: silence around the barline after each measure.
 */
export async function setMusic(text: string, part: Part, marks: readonly ShownMark[], sheet: Sheet, rests: ReadonlyMap<number, TurnRest>): Promise<SetMusic> {
  const rested = countRests(text);
  const natural = await engrave(rested, sheet.line, 'natural');
  const blocks = natural.systems.flatMap((range, i) => blocksOf(dressed(natural.draw(i), range, marks), part, rested.spans, rests));
  // Lines nestle into each other, so that a page holds more than their heights together; how much more shows when they stand.
  for (const more of NESTLING) {
    const { pages, begins } = layOnPages(blocks, { ...sheet, firstHeight: sheet.firstHeight * more, height: sheet.height * more });
    const ranges = pages.flat().map(({ from, to }) => ({ first: blocks[from]!.first, last: blocks[to - 1]!.last }));
    const engraved = await engrave({ ...rested, text: brokenAt(rested.text, ranges) }, sheet.line, 'encoded');
    const systems = ranges.map((range, i) => dressed(engraved.draw(i), range, marks));
    let next = 0;
    const set = pages.map((lines, i): SetPage => {
      const here = systems.slice(next, (next += lines.length));
      return { systems: here, standing: standOnPage(here.map(({ profile, drawing }) => ({ profile, staff: staffOf(drawing.geometry) })), i === 0 ? sheet.firstHeight : sheet.height, sheet, i === pages.length - 1) };
    });
    if (more === NESTLING.at(-1) || set.every((page, i) => fits(page, i === 0 ? sheet.firstHeight : sheet.height))) return { pages: set, begins, musicFace: engraved.musicFace() };
  }
  throw new Error('Unreachable: the last way is always taken.');
}

const staffOf = ({ top, bottom }: Geometry): number => bottom - top;
