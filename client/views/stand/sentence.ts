import { markWords, seatWords } from '../../../core/music/markWords.ts';
import type { MarkInForce } from '../../../core/agreement/inForce.ts';
import type { Proposal } from '../../../core/agreement/state.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { beatOf } from '../../../core/music/metre.ts';
import { numberOf } from '../../../core/music/printedNumber.ts';
import type { Hindrance } from '../../agreement/hindrance.ts';
import { selected } from '../../tools/caret/reducer.ts';
import { words } from '../../words/words.ts';
import { findingText, whyText } from '../findingText.ts';
import { findingHere, hereIn } from './findingHere.ts';
import type { Desk } from './desk.ts';
import { openRanges } from './openMeasures.ts';
import { rangeOf } from './standing.ts';

export const measureName = ({ index }: Desk, ordinal: number): string => {
  const measure = index.part.measures[ordinal - 1];
  return measure ? numberOf(measure) : String(ordinal);
};

/** What a slip is called: the measure it begins in, and its letter. */
export const slipName = (desk: Desk, { from, letter }: Pick<Proposal, 'from' | 'letter'>): string => `${measureName(desk, from)}${letter}`;

const byNote = new WeakMap<readonly MarkInForce[], ReadonlyMap<string, readonly MarkInForce[]>>();

/** What of `marks` stands on a note. Every note of a system asks, and each of them of the same list. */
function onNote(marks: readonly MarkInForce[], note: string): readonly MarkInForce[] {
  let known = byNote.get(marks);
  if (!known) {
    const all = new Map<string, MarkInForce[]>();
    for (const mark of marks) all.set(mark.note, [...(all.get(mark.note) ?? []), mark]);
    byNote.set(marks, (known = all));
  }
  return known.get(note) ?? [];
}

function marksOn(desk: Desk, note: string): string[] {
  const placed = desk.index.notes.get(note)!;
  const beat = beatOf(placed.measure);
  const say = ({ value }: Mark) => markWords(value, beat, words.marks);
  const draft = desk.pencil.draft.filter((mark) => mark.note === note);
  const standing = onNote(desk.inForce, note).filter((mark) => !draft.some(({ value }) => value === mark.value));
  return [
    ...placed.note.technical.filter(({ hidden }) => !hidden).map(({ name, value }) => words.printed([words.technical[name] ?? name.replace('-', ' '), value].filter(Boolean).join(' '))),
    ...standing.map((mark) => (mark.seats === 'all' ? say(mark) : `${say(mark)} ${words.seat.forSome(seatWords(mark.seats, words.marks))}`)),
    ...draft.map((mark) => words.pencilled(say(mark))),
    ...desk.pencil.alone.filter((mark) => mark.note === note).map((mark) => words.alone(say(mark))),
  ];
}

/** A note and everything on it, as a reader without the picture hears it. */
export function noteSentence(desk: Desk, note: string): string {
  const placed = desk.index.notes.get(note);
  if (!placed) return '';
  const pitch = placed.note.pitch ? words.pitch(placed.note.pitch) : words.unpitched;
  return [words.note(placed.position, pitch), ...marksOn(desk, note)].join(', ');
}

/** What does not pass by itself. */
const TO_ACT: ReadonlySet<Hindrance> = new Set(['shelvesFull', 'signedOut', 'gone', 'another', 'oldProgram']);

/** Where one is, and what one can do there. */
export function whereSentence(desk: Desk): { lead: string; rest: string } {
  const { caret, facts } = desk;
  const measure = caret.at === null ? null : (facts.notes.get(caret.at) ?? null);
  if (caret.at === null || measure === null) return { lead: words.stand.noNote, rest: '' };
  const passage = selected(caret, desk.walk.ids);
  const seat = caret.seat === 'all' ? '' : ` ${words.stand.seatOf(words.seat.one(caret.seat))}.`;
  if (passage.length > 1) {
    const ends = [facts.notes.get(passage[0]!)!, facts.notes.get(passage.at(-1)!)!] as const;
    return { lead: words.measures(measureName(desk, ends[0]), measureName(desk, ends[1])), rest: `, ${words.passage(passage.length)}.${seat}` };
  }
  return { lead: words.measure(measureName(desk, measure)), rest: `, ${noteSentence(desk, caret.at)}.${seat}` };
}

/** What becomes of what one writes: what keeps it and what one can do, or that it has arrived; null while all goes its way. `lead` stands alone where one has to act. */
export function goingSentence({ snapshot: { hindrance, waiting, kept, arrived } }: Pick<Desk, 'snapshot'>): { lead: string; rest: string; act: boolean } | null {
  const { what, can, waits, notKept, written } = words.going;
  if (hindrance === null) return arrived ? { lead: written, rest: '', act: false } : null;
  const rest = [waits(waiting.length), waiting.length > 0 && !kept ? notKept : can[hindrance]].filter(Boolean).join(' ');
  return { lead: what[hindrance], rest, act: TO_ACT.has(hindrance) };
}

/** The second line: what waits, what to watch, or which keys help here. */
export function subSentence(desk: Desk, engraving: string | null): string | null {
  const { pencil, state } = desk;
  const range = rangeOf(pencil.draft, desk.facts);
  const finding = findingHere(desk);
  const here = hereIn(desk);
  // A draft elsewhere does not hide what is to be watched where one stands.
  if (range && !(finding && (here < range.from || range.to < here))) return words.stand.draft(pencil.draft.length, words.inMeasures(measureName(desk, range.from), measureName(desk, range.to)));
  if (finding) {
    const text = findingText(finding, (ordinal) => measureName(desk, ordinal));
    return desk.caret.open === finding.measure ? text : [text, whyText(finding.rule, desk.checker?.why(finding.rule))].filter(Boolean).join(' ');
  }
  if (engraving) return engraving;
  if (desk.stopped) return words.checkerStopped;
  if (state.locked) return words.stand.lifted;
  return openRanges(state).length === 0 && desk.heard.length === 0 && state.ink.length > 0 ? words.stand.done : null;
}
