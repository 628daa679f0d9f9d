import { bowEvents } from '../bowing/events.ts';
import { strokesOf } from '../bowing/strokes.ts';
import { type LineEvent, linesOf } from '../matching/line.ts';
import type { Least, Likeness, Run } from '../matching/run.ts';
import { playedTogether } from '../matching/together.ts';
import type { InstrumentName, Part } from '../music/part.ts';
import { tempoMap } from '../music/seconds.ts';
import { type BowAtEvent, bowsOnLine } from './bowsOnLine.ts';
import type { SectionContext } from './context.ts';
import type { OtherSection } from './finding.ts';
import { type Bows, ownBows } from './ownBows.ts';
import { seatMarks } from './seatMarks.ts';
import type { CheckSettings } from './settings.ts';

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

const matched = new WeakMap<Part, WeakMap<Part, { least: Least; runs: Run[] }>>();

/** Marks change often and music does not: runs are kept as long as both parts are. */
function runsBetween(own: Part, other: Part, least: Least): Run[] {
  const ofOwn = matched.get(own) ?? matched.set(own, new WeakMap()).get(own)!;
  const before = ofOwn.get(other);
  if (before?.least.unison === least.unison && before.least.rhythm === least.rhythm) return before.runs;
  const runs = playedTogether(own, other, least);
  ofOwn.set(other, { least, runs });
  return runs;
}

const read = new WeakMap<OtherSection, { settings: CheckSettings; bows: Bows }>();

/** Read once while the other section's marks stay: `other` is then the same object. */
function bowsOf(other: OtherSection, settings: CheckSettings): Bows {
  const before = read.get(other);
  if (before?.settings === settings) return before.bows;
  const bows = readBows(other, settings);
  read.set(other, { settings, bows });
  return bows;
}

function readBows({ part, marks, seats }: OtherSection, settings: CheckSettings): Bows {
  const voices = bowEvents(part, tempoMap(part, settings.assumedTempo));
  const lines = linesOf(part);
  const bows = (signsOn: ReturnType<typeof seatMarks>['forAll']) => voices.map((voice, at) => bowsOnLine(lines[at]!, strokesOf(voice, signsOn), settings));
  return { marked: bows(seatMarks(part, marks, seats).forAll), printed: bows(seatMarks(part, [], []).forAll) };
}

const bowingOf = (part: Part, bows: Bows, line: number, at: number): Bowing => ({ event: linesOf(part)[line]![at]!, marked: bows.marked[line]![at]!, printed: bows.printed[line]![at]! });

function passagesWith(part: SectionContext, other: OtherSection): SharedPassage[] {
  const { unisonNotes, rhythmNotes } = part.settings;
  const runs = runsBetween(part.part, other.part, { unison: unisonNotes, rhythm: rhythmNotes });
  if (!runs.length) return [];
  const [own, others] = [ownBows(part), bowsOf(other, part.settings)];
  const told = new Set<string>();
  return runs.map(({ likeness, a, b, notes }) => ({
    likeness,
    section: other.section,
    instrument: other.part.instrument,
    notes: notes.flatMap(([id, otherId], i) => {
      const pair = `${id} ${otherId}`;
      if (told.has(pair)) return [];
      told.add(pair);
      return [{ own: bowingOf(part.part, own, a.line, a.first + i), other: bowingOf(other.part, others, b.line, b.first + i) }];
    }),
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
