import type { Finger, Mark, MarkValue } from '../../core/music/mark.ts';
import type { Part } from '../../core/music/part.ts';
import type { Seats } from '../../core/music/seat.ts';

/** Marks are written down here as a player would say them: [measure as printed, which note of it from 1, what, whose]. */
export type SpokenMark = [measure: string, note: number, value: MarkValue, seats?: Seats];

export interface Slip {
  from: number;
  to: number;
  seats: Seats;
  why: string;
  marks: Mark[];
}

export const finger = (n: Finger): MarkValue => ({ kind: 'finger', finger: n });
export const string = (n: number): MarkValue => ({ kind: 'string', string: n });
export const down: MarkValue = { kind: 'bow', bow: 'down' };
export const up: MarkValue = { kind: 'bow', bow: 'up' };
export const hooked: MarkValue = { kind: 'hooked' };
export const extension: MarkValue = { kind: 'reach', reach: 'extension' };
export const text = (words: string): MarkValue => ({ kind: 'text', text: words });

const ordinalOf = (part: Part, printed: string): number => {
  const found = part.measures.find(({ number }) => number === printed);
  if (!found) throw new Error(`The demo piece has no measure ${printed}`);
  return found.ordinal;
};

/** The slip a proposal carries: from the first to the last measure it marks. */
export function slip(part: Part, why: string, spoken: SpokenMark[]): Slip {
  const marks = spoken.map(([measure, nth, value, seats]): Mark => {
    const note = part.measures[ordinalOf(part, measure) - 1]!.notes.find(({ index }) => index === nth - 1);
    if (!note) throw new Error(`The demo piece has no note ${nth} in measure ${measure}`);
    return { note: note.id, value, ...(seats === undefined ? {} : { seats }) };
  });
  const ordinals = spoken.map(([measure]) => ordinalOf(part, measure));
  return { from: Math.min(...ordinals), to: Math.max(...ordinals), seats: 'all', why, marks };
}

export const measureAt = ordinalOf;
