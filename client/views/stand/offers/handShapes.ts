import type { HandMoment } from '../../../../core/fingering/explain/handPath.ts';
import type { Geometry } from '../../../../core/engraving/geometry.ts';

/** A note of the picture, in staff spaces; y grows downward and a higher place on the string stands higher. */
export interface HandNote {
  note: string;
  x: number;
  /** Where its sound ends. */
  end: number;
  y: number;
  finger: string;
  /** 1 to 4 lines say the string, highest first; an open string's stand under the band. */
  lines: number;
  open: boolean;
  /** Its finger is written; in a crowd only where a player needs to read it. */
  figure: boolean;
}

export interface HandShapes {
  notes: HandNote[];
  /** Outline of the frame. */
  band: string;
  /** Fingers that leave the frame. */
  reaches: string[];
  /** Slides of a shift: as wide as they are heard; dotted lines where nothing is heard. */
  wedges: { d: string; silent: boolean }[];
  /** Names of positions where the hand arrives. */
  positions: { x: number; y: number; position: number }[];
  /** Scale at the right: mm from the nut. */
  ticks: { y: number; mm: number }[];
  /** Where the notes stand that another fingering plays differently, notes side by side as one. */
  differs: { x0: number; x1: number }[];
  height: number;
  x0: number;
  x1: number;
}

const HEIGHT = 12;
/** Room for open strings under the band, and for names over it. */
const UNDER = 2.2;
const OVER = 2.6;
/** Share of the way to the next note that a shift takes; a hand that follows late moves as long after its note. */
const SLOPE = 0.35;
/** Half the widest wedge. */
const WEDGE = 0.7;
/** Slides less audible than this are drawn as silent: chosen, not measured. */
const SILENT = 0.05;
/** The scale's steps, mm; over a long stretch the finer ones would run into each other. */
const [FINE, COARSE] = [20, 50];
const LONG = 100;

/** Height of a figure over its place, and air. */
const FIGURE = 1.2;
/** Notes nearer than this have no room for a figure each. */
const CROWD = 3.4;
/** Names of positions nearer than this would run into each other. */
const NAMES_APART = 2.6;

/** What a picture of the hand is drawn with besides its path. */
export interface HandSetting {
  /** Notes whose finger is printed where figures are sparse. */
  told?: ReadonlySet<string>;
  /** Lowest and highest place of the scale, mm, so that two pictures can be compared. */
  range?: readonly [number, number];
  /** Notes that the fingering beside it plays differently. */
  differs?: ReadonlySet<string>;
}

/** Lowest and highest place, mm, that a picture of these paths shows. */
export function handRange(path: readonly HandMoment[]): [number, number] {
  const reached = path.flatMap(({ low, high, stopped }) => [low, high, stopped ?? low]);
  return [Math.max(0, Math.min(...reached) - 8), Math.max(...reached) + 8];
}

const at = (x: number, y: number): string => `${x.toFixed(2)} ${y.toFixed(2)}`;

/** Places for the notes of a path that stand in this system: their own x, and mm along the string as height. */
function placed(path: readonly HandMoment[], { notes, measures }: Geometry) {
  const here = path.filter(({ note }) => notes[note]);
  return here.map((moment, i) => {
    const { x, measure } = notes[moment.note]!;
    const next = here[i + 1];
    const bar = measures.find(({ ordinal }) => ordinal === measure)?.x1 ?? x + 4;
    return { moment, x, end: next && notes[next.note]!.x > x ? notes[next.note]!.x : Math.max(x + 2, bar) };
  });
}

/** The hand over time as shapes on the notes' own x. Null where none of its notes stands in this system. Example: one hand held still is one even band. */
export function handShapes(path: readonly HandMoment[], geometry: Geometry, { told, range, differs }: HandSetting = {}): HandShapes | null {
  const here = placed(path, geometry);
  if (here.length === 0) return null;
  const [least, most] = range ?? handRange(here.map(({ moment }) => moment));
  const y = (mm: number): number => OVER + (HEIGHT - OVER - UNDER) * (1 - (mm - least) / (most - least));

  const upper: string[] = [];
  const lower: string[] = [];
  const wedges: HandShapes['wedges'] = [];
  const positions: HandShapes['positions'] = [];
  here.forEach(({ moment, x, end }, i) => {
    const before = here[i - 1]?.moment;
    const next = here[i + 1];
    const moves = before !== undefined && Math.abs(before.low - moment.low) > 0.5;
    if (moves && moment.follows) {
      const late = x + (end - x) * SLOPE;
      upper.push(at(x, y(before.high)), at(late, y(moment.high)));
      lower.push(at(x, y(before.low)), at(late, y(moment.low)));
    } else {
      upper.push(at(before ? x : x - 0.9, y(moment.high)));
      lower.push(at(before ? x : x - 0.9, y(moment.low)));
    }
    if ((before === undefined || moves) && x - (positions.at(-1)?.x ?? -Infinity) >= NAMES_APART) positions.push({ x, y: Math.min(y(moment.high) - 0.5, y(moment.stopped ?? moment.low) - FIGURE), position: moment.position });
    if (!next) {
      upper.push(at(end - 0.4, y(moment.high)));
      lower.push(at(end - 0.4, y(moment.low)));
      return;
    }
    if (Math.abs(next.moment.low - moment.low) <= 0.5 || next.moment.follows) return;
    const leaves = next.x - (next.x - x) * SLOPE;
    upper.push(at(leaves, y(moment.high)));
    lower.push(at(leaves, y(moment.low)));
    if (moment.stopped === null || next.moment.stopped === null) return;
    const [from, to] = [y(moment.stopped), y(next.moment.stopped)];
    const half = WEDGE * Math.min(1, next.moment.slide);
    const silent = next.moment.slide < SILENT;
    wedges.push({ silent, d: silent ? `M${at(leaves, from)}L${at(next.x, to)}` : `M${at(leaves, from)}L${at(next.x, to - half)}V${(to + half).toFixed(2)}Z` });
  });

  const reaches = here.flatMap(({ moment: { stopped, low, high }, x }) => {
    if (stopped === null || (stopped >= low - 3 && stopped <= high + 3)) return [];
    const edge = stopped > high ? y(high) : y(low);
    const tip = y(stopped);
    return [`M${at(x - 0.8, edge)}C${at(x - 0.8, tip)} ${at(x - 0.5, tip + (tip < edge ? -0.9 : 0.9))} ${at(x, tip + (tip < edge ? -0.9 : 0.9))}S${at(x + 0.8, tip)} ${at(x + 0.8, edge)}Z`];
  });
  const tick = most - least > LONG ? COARSE : FINE;
  const ticks = Array.from({ length: Math.floor(most / tick) - Math.ceil(least / tick) + 1 }, (_, i) => (Math.ceil(least / tick) + i) * tick).map((mm) => ({ mm, y: y(mm) }));
  const crowded = (i: number): boolean => [here[i - 1], here[i + 1]].some((other) => other !== undefined && other.x !== here[i]!.x && Math.abs(other.x - here[i]!.x) < CROWD);
  const notes = here.map(({ moment, x, end }, i): HandNote => ({
    note: moment.note, x, end, y: moment.stopped === null ? HEIGHT - 0.9 : y(moment.stopped), finger: moment.finger === 'thumb' ? 'thumb' : String(moment.finger), lines: moment.string, open: moment.stopped === null,
    figure: told === undefined || told.has(moment.note) || !crowded(i),
  }));
  const spans: HandShapes['differs'] = [];
  here.forEach(({ moment, x }, i) => {
    if (!differs?.has(moment.note)) return;
    const joined = i > 0 && differs.has(here[i - 1]!.moment.note) ? spans.at(-1) : undefined;
    if (joined) joined.x1 = x + 0.9;
    else spans.push({ x0: x - 0.9, x1: x + 0.9 });
  });
  return { notes, band: `M${upper.join('L')}L${lower.reverse().join('L')}Z`, reaches, wedges, positions, ticks, differs: spans, height: HEIGHT, x0: here[0]!.x - 2.5, x1: here.at(-1)!.end + 3.5 };
}
