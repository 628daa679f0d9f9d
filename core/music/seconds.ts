import { firstIndex } from './firstIndex.ts';
import type { Part } from './part.ts';
import { quarters } from './time.ts';

export type Seconds = number;

export interface TempoMap {
  /** Seconds from the start of the part at a place given in quarters from its start. */
  at(position: number): Seconds;
  /** True where the part gives no tempo of its own there and the assumed one was taken. */
  isAssumed(position: number): boolean;
}

interface Leg {
  from: number;
  seconds: Seconds;
  tempo: number | null;
}

function legs(part: Part, assumedTempo: number): Leg[] {
  const result: Leg[] = [{ from: 0, seconds: 0, tempo: null }];
  for (const measure of part.measures) {
    const start = quarters(measure.start);
    const places = measure.notes.map((note) => ({ from: start + quarters(note.onset), tempo: note.tempo })).sort((a, b) => a.from - b.from);
    for (const { from, tempo } of places) {
      const last = result.at(-1)!;
      if (tempo === last.tempo || tempo === null || from < last.from) continue;
      result.push({ from, seconds: last.seconds + ((from - last.from) * 60) / (last.tempo ?? assumedTempo), tempo });
    }
  }
  return result;
}

/**
 * Musical place to seconds, in written order. Model: the tempo in force at each note holds until the next note with another; repeats, fermatas and
 * gradual changes are left out. `assumedTempo` in quarters a minute, above 0, stands where the part gives none.
 * Invariant: `at` never falls. Example: at 60 quarters a minute `at(4)` is 4.
 */
export function tempoMap(part: Part, assumedTempo: number): TempoMap {
  const all = legs(part, assumedTempo);
  const legAt = (position: number): Leg => all[Math.max(0, firstIndex(all.length, (at) => all[at]!.from > position) - 1)]!;
  return {
    at(position) {
      const leg = legAt(position);
      return leg.seconds + ((position - leg.from) * 60) / (leg.tempo ?? assumedTempo);
    },
    isAssumed: (position) => legAt(position).tempo === null,
  };
}
