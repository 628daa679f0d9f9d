import { beatOf } from '../music/metre.ts';
import type { Part } from '../music/part.ts';
import type { Seconds, TempoMap } from '../music/seconds.ts';
import { quarters } from '../music/time.ts';

/**
 * When the beats of measures `from` to `to` (ordinals, both included) fall, in seconds of the part; the first of each measure is marked. Beats of a
 * pick-up count from its own beginning. Example: 3/4 at 60 a minute is 0, 1, 2.
 */
export function beatsOf({ measures }: Part, tempo: TempoMap, from: number, to: number): { second: Seconds; first: boolean }[] {
  return measures.filter(({ ordinal }) => ordinal >= from && ordinal <= to).flatMap(({ start, length, time }) => {
    const beat = quarters(beatOf({ time }));
    const count = Math.max(1, Math.ceil(quarters(length) / beat - 1e-6));
    return Array.from({ length: count }, (_, i) => ({ second: tempo.at(quarters(start) + i * beat), first: i === 0 }));
  });
}
