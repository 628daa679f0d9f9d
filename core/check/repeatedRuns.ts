import type { BowEvent, Voice } from '../bowing/events.ts';

/** The same notes twice in a voice: `length` events from `first` and again from `second`. */
export interface RepeatedRun {
  first: number;
  second: number;
  length: number;
}

const keyOf = ({ notes, from, to }: BowEvent): string => `${notes.map(({ midi, sounding }) => sounding ?? midi ?? '').join('+')}:${Math.round((to - from) * 960)}`;

/**
 * Runs of at least `least` events that sounded before in the same voice, pitch for pitch and length for length; each compared with the first time it was
 * heard, runs as long as they go, none overlapping its own model. Time grows with the notes. Example: A B C A B C with `least` 3 gives one run of 3.
 */
export function repeatedRuns(voice: Voice, least: number): RepeatedRun[] {
  const numbers = new Map<string, number>();
  const keys = voice.map((event) => {
    const key = keyOf(event);
    return numbers.get(key) ?? numbers.set(key, numbers.size).get(key)!;
  });
  const firstAt = new Map<string, number>();
  const runs: RepeatedRun[] = [];
  for (let at = 0; at + least <= keys.length; ) {
    const opening = keys.slice(at, at + least).join(' ');
    const first = firstAt.get(opening);
    if (first === undefined || first + least > at) {
      if (first === undefined) firstAt.set(opening, at);
      at += 1;
      continue;
    }
    let length = least;
    while (first + length < at && at + length < keys.length && keys[first + length] === keys[at + length]) length += 1;
    runs.push({ first, second: at, length });
    at += length;
  }
  return runs;
}
