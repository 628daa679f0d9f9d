import { bowEvents, type Voice } from '../bowing/events.ts';
import { strokesOf } from '../bowing/strokes.ts';
import { type BowAtEvent, bowsOnLine } from '../check/bowsOnLine.ts';
import { isForAll, type NoteMarks, seatMarks } from '../check/seatMarks.ts';
import { isOfTheBow, type Mark } from '../music/mark.ts';
import type { Part } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import { tempoMap } from '../music/seconds.ts';
import { compareTimes, type ExactTime, plus } from '../music/time.ts';
import { heldPlace, tiedNotes } from './held.ts';
import { type Line, type LineEvent, linesOf } from './line.ts';
import { MarkSheet } from './markSheet.ts';
import type { Run } from './run.ts';
import { SlurNeeds } from './slurNeeds.ts';

export interface MarkedPart {
  part: Part;
  /** Every mark in force. */
  marks: readonly Mark[];
  seats: readonly SeatId[];
}

/** Why something was left behind, in players' words. */
export const WHY_LEFT = {
  seats: 'It is marked for some seats only, and a bowing is carried for the whole section.',
  plucked: 'The note is plucked in the other passage.',
  grace: 'It stands on or beside a grace note that the other passage does not share.',
  edge: 'The slur runs over the edge of the passage.',
  held: 'The other passage holds one note where this one ties two.',
} as const;

/** A note of the passage carried from, and why what stands on it could not be carried. */
export interface LeftBehind {
  note: string;
  why: keyof typeof WHY_LEFT;
}

export interface Carried {
  /** To be proposed for all of the section. */
  marks: Mark[];
  left: LeftBehind[];
}

const SIGNS = ['retake', 'hooked'] as const;

interface Side {
  voice: Voice;
  events: Line;
  line: Line;
  first: number;
  on(note: string): NoteMarks;
}

function sideOf({ part, marks, seats }: MarkedPart, { line: at, first }: Run['a'], length: number): Side {
  const line = linesOf(part)[at]!;
  return { voice: bowEvents(part, tempoMap(part, 90))[at]!, line, first, events: line.slice(first, first + length), on: seatMarks(part, marks, seats).forAll };
}

const bowsOf = ({ voice, line, first, events, on }: Side): readonly BowAtEvent[] =>
  bowsOnLine(line, strokesOf(voice, on), { retakeRest: 0, strokesCounted: 0 }).slice(first, first + events.length);

const hasSigns = ({ bow, retake, hooked, slur, changes }: NoteMarks): boolean => Boolean(bow ?? retake ?? hooked ?? slur) || changes.length > 0;

/** Signs of the first note of an event. What stands there by hand and not in the model is rubbed out. */
function carrySigns(there: NoteMarks, here: NoteMarks, note: string, sheet: MarkSheet): void {
  if (there.bow && there.bow !== here.bow) sheet.put(note, { kind: 'bow', bow: there.bow });
  if (!there.bow && here.bow && !here.bowPrinted) sheet.put(note, { kind: 'none', slot: 'bow' });
  for (const sign of SIGNS) {
    if (there[sign] && !here[sign]) sheet.put(note, { kind: sign });
    if (!there[sign] && here[sign]) sheet.put(note, { kind: 'none', slot: sign });
  }
}

/** Changes of bow inside a held note, told as quarters after it begins, however the two passages tie it. False where one has no place. */
function carryChanges(from: Side, there: LineEvent, to: Side, here: LineEvent, sheet: MarkSheet, slurs: SlurNeeds): boolean {
  const [model, tail] = [tiedNotes(from.voice, there), tiedNotes(to.voice, here)];
  const wanted = model.flatMap(({ note, from: begins }, i) => {
    const { changes, slur } = from.on(note.id);
    return [...(i > 0 && slur === 'split' ? [begins] : []), ...changes.map((after) => plus(begins, after))];
  });
  const isWanted = (offset: ExactTime) => wanted.some((other) => compareTimes(other, offset) === 0);
  tail.forEach(({ note, from: begins }, i) => {
    const { changes, slur } = to.on(note.id);
    for (const after of changes) if (!isWanted(plus(begins, after))) sheet.put(note.id, { kind: 'none', slot: 'change', after });
    if (i > 0 && slur === 'split' && !isWanted(begins)) slurs.add(note.id, { splits: false });
  });
  const places = wanted.map((offset) => heldPlace(to.voice, here, offset));
  for (const place of places) {
    if (!place || to.on(place.note.id).changes.some((other) => compareTimes(other, place.after) === 0)) continue;
    if (compareTimes(place.after, 0) === 0 && place.note.id !== here.head.id) slurs.add(place.note.id, { splits: true });
    else sheet.put(place.note.id, { kind: 'change', after: place.after });
  }
  return places.every((place) => place !== null) && !model.slice(1).some(({ note }) => from.on(note.id).bow !== undefined || from.on(note.id).retake !== undefined);
}

/** Makes the bow begin, or go on, at an event that follows `before`, as it does in the model. */
function carrySlur(begins: boolean, there: NoteMarks, to: Side, event: LineEvent, before: string, sheet: MarkSheet, slurs: SlurNeeds): void {
  const note = event.head.id;
  if (begins) {
    if (event.bound || to.on(note).hooked) slurs.add(note, { splits: true });
    else slurs.add(before, { joins: false });
    return;
  }
  if (!there.bow && to.on(note).bow) sheet.put(note, { kind: 'none', slot: 'bow' });
  slurs.add(note, { splits: false });
  if (!event.bound) slurs.add(before, { joins: true });
}

/** Notes whose marks cannot be carried at all: for some seats only, or on grace notes. */
function leftFirst({ marks, seats }: MarkedPart, side: Side): LeftBehind[] {
  const [begin, end] = [side.events[0]!.first, side.events.at(-1)!.last];
  const heads = new Map(side.voice.slice(begin, end + 1).map(({ head }) => [head.id, head]));
  const narrow = marks.filter((mark) => heads.has(mark.note) && isOfTheBow(mark.value) && !isForAll(mark, seats));
  const graces = [...heads.values()].filter(({ id, grace }) => grace && hasSigns(side.on(id)));
  return [...[...new Set(narrow.map(({ note }) => note))].map((note): LeftBehind => ({ note, why: 'seats' })), ...graces.map(({ id }): LeftBehind => ({ note: id, why: 'grace' }))];
}

/**
 * The bowing of a passage carried onto the same music elsewhere: marks that make the bows of `run.b` in `to` begin, change and bear signs as those of
 * `run.a` in `from` do, as marked for all and as printed; and what could not be carried, with why. What stands there already is not marked again.
 * `run` as found by `playedTogether(from.part, to.part)` or `playedAnywhere`. Only marks for the whole section are read and given.
 * Example: a slur split in the first violins gives one split for the seconds in octaves.
 */
export function carryBowing(from: MarkedPart, to: MarkedPart, run: Run): Carried {
  const [model, target] = [sideOf(from, run.a, run.notes.length), sideOf(to, run.b, run.notes.length)];
  const left = leftFirst(from, model);
  const sheet = new MarkSheet();
  const slurs = new SlurNeeds();
  model.events.forEach((there, i) => {
    const here = target.events[i]!;
    const signs = model.on(there.head.id);
    if (here.head.pizzicato) {
      if (!there.head.pizzicato && hasSigns(signs)) left.push({ note: there.head.id, why: 'plucked' });
      return;
    }
    if (there.head.pizzicato) return;
    carrySigns(signs, target.on(here.head.id), here.head.id, sheet);
    if (!carryChanges(model, there, target, here, sheet, slurs)) left.push({ note: there.head.id, why: 'held' });
  });
  const modelBows = bowsOf(model);
  const withSigns = { ...target, on: seatMarks(to.part, [...to.marks, ...sheet.all()], to.seats).forAll };
  const targetBows = bowsOf(withSigns);
  modelBows.forEach(({ begins, bowed }, i) => {
    const now = targetBows[i]!;
    if (!bowed || !now.bowed || begins === now.begins) return;
    const note = model.events[i]!.head.id;
    const before = target.voice[target.events[i]!.first - 1]?.head;
    if (!before || (i === 0 && !begins)) left.push({ note, why: 'edge' });
    else if (before.grace) left.push({ note, why: 'grace' });
    else carrySlur(begins, model.on(note), withSigns, target.events[i]!, before.id, sheet, slurs);
  });
  slurs.settle(target.on, sheet);
  const last = model.events.at(-1)!.head;
  if (model.on(last.id).slur === 'join') left.push({ note: last.id, why: 'edge' });
  return { marks: sheet.all(), left };
}
