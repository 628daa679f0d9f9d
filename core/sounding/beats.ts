import type { Part } from '../music/part.ts';
import type { Seconds, TempoMap } from '../music/seconds.ts';
import { quarters } from '../music/time.ts';

/** Eighths and shorter in threes are beaten in threes: common practice, no source. */
const COMPOUND = [6, 9, 12];

/** Quarters of one beat in a time signature; a quarter where there is none. Example: 6/8 is beaten in 1.5. */
function beatOf(time: { beats: string; beatType: string } | null): number {
  const unit = 4 / Number(time?.beatType ?? 4);
  if (!(unit > 0)) return 1;
  return unit < 1 && COMPOUND.includes(Number(time?.beats)) ? 3 * unit : unit;
}

/**
 * When the beats of measures `from` to `to` (ordinals, both included) fall, in seconds of the part; the first of each measure is marked. Beats of a
 * pick-up count from its own beginning. Example: 3/4 at 60 a minute is 0, 1, 2.
 */
export function beatsOf({ measures }: Part, tempo: TempoMap, from: number, to: number): { second: Seconds; first: boolean }[] {
  return measures.filter(({ ordinal }) => ordinal >= from && ordinal <= to).flatMap(({ start, length, time }) => {
    const beat = beatOf(time);
    const count = Math.max(1, Math.ceil(quarters(length) / beat - 1e-6));
    return Array.from({ length: count }, (_, i) => ({ second: tempo.at(quarters(start) + i * beat), first: i === 0 }));
  });
}
