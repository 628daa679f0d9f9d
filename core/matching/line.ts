import { type BowEvent, bowEvents, type Voice } from '../bowing/events.ts';
import type { Note, Part } from '../music/part.ts';
import { tempoMap } from '../music/seconds.ts';
import { quarters } from '../music/time.ts';

/** Millionths of a quarter: whole numbers, so that times compare as equal or not. */
export type Ticks = number;

/** What is played at one onset of a voice: chords and notes tied together are one. */
export interface LineEvent {
  /** Carries the marks. */
  head: Note;
  /** Its first and last event in the voice; they differ where notes are tied together. */
  first: number;
  last: number;
  /** Ordinal of the measure it begins in, and when. */
  measure: number;
  at: Ticks;
  lasts: Ticks;
  /** Silence before it. */
  gap: Ticks;
  /** Pitch classes that sound, lowest number first, "2+9"; spelling and octave do not count. */
  pitches: string;
  /** Under the same bow as the event before it, as printed. */
  bound: boolean;
  /** Strokes of a tremolo; empty where there is none. */
  tremolo: string;
}

export type Line = readonly LineEvent[];

const ticks = (time: number): Ticks => Math.round(time * 1e6);

const pitchesOf = ({ notes }: BowEvent): string => {
  const keys = notes.map(({ sounding, midi }) => sounding ?? midi).filter((key) => key !== undefined);
  return [...new Set(keys.map((key) => ((key % 12) + 12) % 12))].sort((a, b) => a - b).join('+');
};

const isTied = (before: BowEvent, event: BowEvent): boolean =>
  ticks(before.to) === ticks(event.from) && before.head.ties.includes('start') && event.head.ties.includes('stop');

function lineOf(voice: Voice): Line {
  const line: LineEvent[] = [];
  let before: BowEvent | null = null;
  voice.forEach((event, index) => {
    if (event.head.grace) return;
    const pitches = pitchesOf(event);
    const held = line.at(-1);
    if (held && before && isTied(before, event) && held.pitches === pitches) {
      held.last = index;
      held.lasts += ticks(event.to - event.from);
    } else {
      line.push({
        head: event.head,
        first: index,
        last: index,
        measure: event.measure,
        at: ticks(quarters(event.head.onset)),
        lasts: ticks(event.to - event.from),
        gap: before ? Math.max(0, ticks(event.from - before.to)) : 0,
        pitches,
        bound: event.bound,
        tremolo: event.head.ornaments.find((ornament) => ornament.startsWith('tremolo')) ?? '',
      });
    }
    before = event;
  });
  return line;
}

const known = new WeakMap<Part, readonly Line[]>();

/**
 * The voices of a part as lines that can be compared: by place in the same order as `bowEvents` gives them. Grace notes are left out, tied notes are one
 * event. Times closer than a millionth of a quarter are the same. Worked out once for a part, whose notes must not change afterwards.
 * Example: a half note tied to a quarter is one event of three quarters.
 */
export function linesOf(part: Part): readonly Line[] {
  const before = known.get(part);
  if (before) return before;
  const lines = bowEvents(part, tempoMap(part, 90)).map(lineOf);
  known.set(part, lines);
  return lines;
}
