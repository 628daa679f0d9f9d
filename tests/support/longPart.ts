import type { Mark, MarkValue } from '../../core/music/mark.ts';
import type { Note, Part } from '../../core/music/part.ts';
import { type SeatId, type Seats } from '../../core/music/seat.ts';
import type { Chance } from './chance.ts';
import { partOf } from './partBuilder.ts';

const SCALE = ['G3', 'A3', 'B3', 'C4', 'D4', 'E4', 'F#4', 'G4', 'A4', 'B4', 'C5', 'D5', 'E5', 'F#5', 'G5', 'A5', 'B5', 'C6', 'D6'];

type Kind = 'run' | 'quick' | 'slurred' | 'tune' | 'held' | 'long' | 'rest' | 'plucked' | 'trembled' | 'divided' | 'printed' | 'double';
const KINDS: readonly Kind[] = ['run', 'quick', 'quick', 'slurred', 'slurred', 'slurred', 'tune', 'tune', 'held', 'long', 'rest', 'plucked', 'trembled', 'divided', 'printed', 'double'];

function measureText(kind: Kind, chance: Chance): string {
  let degree = 3 + chance.below(10);
  const pitch = (): string => SCALE[(degree = Math.max(0, Math.min(SCALE.length - 1, degree + chance.below(7) - 3)))]!;
  const row = (count: number, length: string, tail = (_: number) => ''): string => Array.from({ length: count }, (_, i) => `${pitch()}:${length}${tail(i)}`).join(' ');
  switch (kind) {
    case 'run': return row(8, '1/2');
    case 'quick': return `{q=${chance.pick([96, 144, 160])}} ${row(16, '1/4')}`;
    case 'slurred': return row(8, '1/2', (i) => (i % 4 === 0 ? '(' : i % 4 === 3 ? ')' : ''));
    case 'tune': return `${pitch()}:3/2( ${pitch()}:1/2) ${pitch()}:1 ${pitch()}:1'`;
    case 'held': return `${pitch()}:4~`;
    case 'long': return `${pitch()}:2( ${pitch()}:2)`;
    case 'rest': return 'r:2 r:2';
    case 'plucked': return `{pizz} ${row(4, '1')} {arco}`;
    case 'trembled': return row(2, '2', () => '*');
    case 'divided': return `${row(4, '1')} && ${row(4, '1')}`;
    case 'double': return Array.from({ length: 4 }, () => `[${chance.pick(SCALE)} ${chance.pick(SCALE)}]:1`).join(' ');
    case 'printed': return row(4, '1', (i) => (i % 2 ? '<up>' : '<down>'));
  }
}

/** Invented music for a violin section in which everything a bow meets occurs, four quarters a measure; phrases come again. Same chance, same part. */
export function longPart(measures: number, chance: Chance): Part {
  const texts: string[] = [];
  while (texts.length < measures) {
    if (texts.length > 16 && chance.happens(0.1)) {
      const from = chance.below(texts.length - 8);
      texts.push(...texts.slice(from, from + 2 + chance.below(5)));
      continue;
    }
    const kind = chance.pick(KINDS);
    // Held measures come in chains of one pitch, so that there are notes longer than a bow.
    if (kind === 'held') {
      const pitch = chance.pick(SCALE);
      const count = 2 + chance.below(4);
      for (let i = 0; i < count; i += 1) texts.push(`${pitch}:4${i < count - 1 ? '~' : ''}`);
    } else texts.push(`${chance.happens(0.15) ? `{${chance.pick(['pp', 'p', 'mf', 'f', 'ff'])}} ` : ''}${measureText(kind, chance)}`);
  }
  return partOf(`{mf} {q=96} ${texts.slice(0, measures).join(' | ')}`);
}

/** The seats of some desks, or everyone. */
export function someSeats(seats: readonly SeatId[], chance: Chance): Seats | undefined {
  if (seats.length === 0 || chance.happens(0.6)) return undefined;
  return seats.filter(() => chance.happens(chance.happens(0.5) ? 0.2 : 0.7)).slice(0, 40);
}

/** A mark of any kind that may stand on this note. */
export function anyValue(note: Note, chance: Chance): MarkValue {
  const after = Number(note.duration) >= 2 ? 1 + chance.below(2) : 0;
  return chance.pick<() => MarkValue>([
    () => ({ kind: 'finger', finger: chance.pick([0, 1, 2, 3, 4, 4, 'thumb'] as const) }),
    () => ({ kind: 'finger', finger: chance.pick([1, 2, 3, 4] as const) }),
    () => ({ kind: 'string', string: chance.pick([1, 2, 3, 4]) }),
    () => ({ kind: 'bow', bow: chance.pick(['up', 'down'] as const) }),
    () => ({ kind: 'bow', bow: chance.pick(['up', 'down'] as const) }),
    () => ({ kind: 'change', after }),
    () => ({ kind: 'change', after }),
    () => ({ kind: 'slur', slur: chance.pick(['split', 'join'] as const) }),
    () => ({ kind: chance.pick(['retake', 'hooked'] as const) }),
    () => ({ kind: 'reach', reach: chance.pick(['extension', 'contraction'] as const) }),
    () => ({ kind: 'harmonic', harmonic: chance.pick(['natural', 'artificial'] as const) }),
    () => ({ kind: 'none', slot: chance.pick(['finger', 'bow', 'change', 'slur', 'string'] as const) }),
  ])();
}

/** A mark on a note of one of these measures. */
export function anyMark(part: Part, seats: readonly SeatId[], chance: Chance, measures: readonly number[] = part.measures.map(({ ordinal }) => ordinal)): Mark | null {
  const { notes } = part.measures[chance.pick(measures) - 1]!;
  if (notes.length === 0) return null;
  const note = chance.pick(notes);
  const whose = someSeats(seats, chance);
  return { note: note.id, value: anyValue(note, chance), ...(whose ? { seats: whose } : {}) };
}

/** Fingers on every note of a measure and here and there a string, a reach or a harmonic, as somebody writes a passage out. */
export function anyPassage(part: Part, seats: readonly SeatId[], chance: Chance, measure: number): Mark[] {
  const whose = someSeats(seats, chance);
  const owned = whose ? { seats: whose } : {};
  return part.measures[measure - 1]!.notes.flatMap(({ id, rest }): Mark[] => {
    if (rest) return [];
    const finger: Mark = { note: id, value: { kind: 'finger', finger: chance.pick([1, 2, 3, 4] as const) }, ...owned };
    const more = chance.pick<MarkValue | null>([null, null, null, null, { kind: 'string', string: chance.pick([1, 2, 3, 4]) }, { kind: 'reach', reach: 'extension' }, { kind: 'harmonic', harmonic: 'natural' }]);
    return more ? [finger, { note: id, value: more, ...owned }] : [finger];
  });
}

/** `count` marks all over the part. */
export function anyMarks(part: Part, seats: readonly SeatId[], count: number, chance: Chance): Mark[] {
  const marks: Mark[] = [];
  while (marks.length < count) {
    const mark = anyMark(part, seats, chance);
    if (mark) marks.push(mark);
  }
  return marks;
}
