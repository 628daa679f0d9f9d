import { carryMarks, type WhyNotCarried } from '../../../core/matching/editions/carryMarks.ts';
import type { Mark } from '../../../core/music/mark.ts';
import type { Note, Part } from '../../../core/music/part.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { type Chance } from '../chance.ts';
import { type Edit } from './edits.ts';
import { readTruth, type TrueMoment } from './readTruth.ts';
import { copied, type PartText, written } from './textOfPart.ts';
import { mustStay } from './unchanged.ts';

export interface Outcome {
  /** Marks, one on every note; how many stayed; how many had to, and did. */
  marks: number;
  stayed: number;
  had: number;
  had_stayed: number;
  /** Marks that came to stand on another note than the one they were made for. */
  wrong: string[];
  missed: string[];
  why: Map<WhyNotCarried, number>;
}

export function partIn(text: string): Part {
  const read = readScore(text);
  if (!read.ok) throw new Error(read.fault.text);
  return read.score.parts[0]!;
}

const notesOf = (part: Part): Note[] => part.measures.flatMap(({ notes }) => notes);

/** Edits at places at least eight measures apart; an edit a measure does not allow is tried at another one. */
export function edited(text: PartText, edits: readonly Edit[], chance: Chance): PartText {
  const now = copied(text);
  const places: number[] = [];
  for (const edit of edits) {
    for (let tries = 0; tries < 40; tries += 1) {
      const at = chance.below(now.measures.length);
      if (places.some((place) => Math.abs(place - at) < 8)) continue;
      if (!edit(now, at, chance)) continue;
      places.push(at);
      break;
    }
  }
  return now;
}

const known = new WeakMap<PartText, { part: Part; moments: TrueMoment[] }>();

function reading(text: PartText): { part: Part; moments: TrueMoment[] } {
  const before = known.get(text);
  if (before) return before;
  const read = { part: partIn(written(text)), moments: readTruth(text).moments };
  known.set(text, read);
  return read;
}

/** A mark on every note of `before` carried to `now`, held against what the texts themselves say. */
export function carried(before: PartText, now: PartText): Outcome {
  const [{ part: older, moments }, { part: newer, moments: there }] = [reading(before), reading(now)];
  const origins = now.measures.flatMap(({ items }) => items.filter(({ kind }) => kind === 'note').map(({ origin }) => origin));
  const [oldNotes, newNotes] = [notesOf(older), notesOf(newer)];
  const [oldIndex, newIndex] = [new Map(oldNotes.map(({ id }, i) => [id, i])), new Map(newNotes.map(({ id }, i) => [id, i]))];
  if (newNotes.length !== origins.length) throw new Error('The reader and the text count differently.');
  const marks = oldNotes.filter(({ rest }) => !rest).map(({ id }): Mark => ({ note: id, value: { kind: 'finger', finger: 1 } }));
  const { kept, lost } = carryMarks(older, newer, marks);
  const gone = new Set(lost.map(({ mark }) => mark.note));
  const stayed = marks.filter(({ note }) => !gone.has(note));
  if (stayed.length !== kept.length) throw new Error('Marks kept and lost are not the marks there were.');
  const must = mustStay(moments, there);
  const why = new Map<WhyNotCarried, number>();
  for (const one of lost) why.set(one.why, (why.get(one.why) ?? 0) + 1);
  const wrong = stayed.flatMap(({ note }, k) => {
    const [from, to] = [oldIndex.get(note)!, newIndex.get(kept[k]!.note)!];
    return origins[to] === from ? [] : [`note ${from} on note ${to}, which is ${origins[to]}`];
  });
  const missed = lost.filter(({ mark }) => must.has(oldIndex.get(mark.note)!)).map((one) => `note ${oldIndex.get(one.mark.note)} measure ${one.measure}: ${one.why}`);
  return { marks: marks.length, stayed: stayed.length, had: must.size, had_stayed: must.size - missed.length, wrong, missed, why };
}
