import { type LineEvent, linesOf } from '../matching/line.ts';
import type { Least, Likeness, Run } from '../matching/run.ts';
import { playedTogether } from '../matching/together.ts';
import type { InstrumentName, Part } from '../music/part.ts';
import type { BowAtEvent } from './bowsOnLine.ts';
import type { SectionContext } from './context.ts';
import type { OtherSection } from './finding.ts';
import { otherBows } from './otherBows.ts';
import { type Bows, ownBows } from './ownBows.ts';

/** What the bows of one section do at one note, as marked for all of it and as printed. */
export interface Bowing {
  event: LineEvent;
  marked: BowAtEvent;
  printed: BowAtEvent;
}

/** Notes in a row that two sections play alike at the same time. */
export interface SharedPassage {
  likeness: Likeness;
  section: string;
  instrument: InstrumentName | null;
  notes: { own: Bowing; other: Bowing }[];
}

interface Pairs extends Pick<Run, 'likeness'> {
  /** Lines of both parts, and indices in them. */
  lines: [own: number, other: number];
  events: [own: number, other: number][];
}

const matched = new WeakMap<Part, WeakMap<Part, { least: Least; pairs: Pairs[] }>>();

/** The runs as pairs of events, none told twice: unisons come first. */
function pairsOf(runs: readonly Run[]): Pairs[] {
  const told = new Set<string>();
  return runs.map(({ likeness, a, b, notes }) => ({
    likeness,
    lines: [a.line, b.line],
    events: notes.flatMap(([id, otherId], i): [number, number][] => {
      const pair = `${id} ${otherId}`;
      if (told.has(pair)) return [];
      told.add(pair);
      return [[a.first + i, b.first + i]];
    }),
  }));
}

/** Marks change often and music does not: what was matched is kept as long as both parts are. */
function pairsBetween(own: Part, other: Part, least: Least): Pairs[] {
  const ofOwn = matched.get(own) ?? matched.set(own, new WeakMap()).get(own)!;
  const before = ofOwn.get(other);
  if (before?.least.unison === least.unison && before.least.rhythm === least.rhythm) return before.pairs;
  const pairs = pairsOf(playedTogether(own, other, least));
  ofOwn.set(other, { least, pairs });
  return pairs;
}

const bowingOf = (part: Part, bows: Bows, line: number, at: number): Bowing => ({ event: linesOf(part)[line]![at]!, marked: bows.marked[line]![at]!, printed: bows.printed[line]![at]! });

function passagesWith(part: SectionContext, other: OtherSection): SharedPassage[] {
  const { unisonNotes, rhythmNotes } = part.settings;
  const pairs = pairsBetween(part.part, other.part, { unison: unisonNotes, rhythm: rhythmNotes });
  if (!pairs.length) return [];
  const [own, others] = [ownBows(part), otherBows(other, part.settings)];
  return pairs.map(({ likeness, lines, events }) => ({
    likeness,
    section: other.section,
    instrument: other.part.instrument,
    notes: events.map(([at, otherAt]) => ({ own: bowingOf(part.part, own, lines[0], at), other: bowingOf(other.part, others, lines[1], otherAt) })),
  }));
}

const known = new WeakMap<SectionContext, SharedPassage[]>();

/**
 * Passages that other sections play alike at the same time, with what both bows do note by note; a note in unison is not told again as one of like rhythm.
 * Only marks for all of a section count. Worked out once for a part as marked.
 */
export function besideOthers(part: SectionContext): SharedPassage[] {
  const before = known.get(part);
  if (before) return before;
  const now = part.others.flatMap((other) => passagesWith(part, other));
  known.set(part, now);
  return now;
}
