import type { BowEvent, Voice } from '../bowing/events.ts';

/** The same notes twice in a voice: `length` events from `first` and again from `second`. */
export interface RepeatedRun {
  first: number;
  second: number;
  length: number;
  /** Where its beginning was heard at other times before `second`, latest first, and for how many events alike; clear of it. */
  between: { first: number; length: number }[];
}

/** How many of the times between are kept: enough for a figure that comes eight times over. Chosen, not measured. */
const BETWEEN = 8;

const keyOf = ({ notes, from, to }: BowEvent): string => `${notes.map(({ midi, sounding }) => sounding ?? midi ?? '').join('+')}:${Math.round((to - from) * 960)}`;

/**
 * Runs of at least `least` events that sounded before in the same voice, pitch for pitch and length for length; each compared with the first time it was
 * heard, and with the latest times between; runs as long as they go, none overlapping its own model. Time grows with the notes. Example: A B C A B C with `least` 3 gives one run of 3.
 */
export function repeatedRuns(voice: Voice, least: number): RepeatedRun[] {
  const numbers = new Map<string, number>();
  const keys = voice.map((event) => {
    const key = keyOf(event);
    return numbers.get(key) ?? numbers.set(key, numbers.size).get(key)!;
  });
  const alike = (first: number, second: number, most: number): number => {
    let length = least;
    while (length < most && first + length < second && keys[first + length] === keys[second + length]) length += 1;
    return length;
  };
  const heard = new Map<string, number[]>();
  const runs: RepeatedRun[] = [];
  let free = 0;
  for (let at = 0; at + least <= keys.length; at += 1) {
    const opening = keys.slice(at, at + least).join(' ');
    const times = heard.get(opening) ?? heard.set(opening, []).get(opening)!;
    const [first, ...others] = times;
    if (at >= free && first !== undefined && first + least <= at) {
      const length = alike(first, at, keys.length - at);
      const clear = others.filter((other) => other + least <= at).slice(-BETWEEN).reverse();
      runs.push({ first, second: at, length, between: clear.map((other) => ({ first: other, length: alike(other, at, length) })) });
      free = at + length;
    }
    times.push(at);
  }
  return runs;
}
