import type { Part } from '../music/part.ts';
import { tempoMap, type Seconds } from '../music/seconds.ts';
import { quarters } from '../music/time.ts';

/** Silence around a barline: how long nothing has sounded before it, and how long nothing sounds after it. */
export interface TurnRest {
  before: Seconds;
  after: Seconds;
}

export type TurnKind = 'good' | 'hurried' | 'none';

/** Seconds of silence in which a page is turned in peace, and in which it can be done at all. Chosen, not measured. */
const TURNING = { good: 2, hurried: 0.75 } as const;

/** How well a page is turned in a silence. Example: `turnKind({ before: 1.5, after: 1 })` is "good". */
export function turnKind({ before, after }: TurnRest): TurnKind {
  const seconds = before + after;
  return seconds >= TURNING.good ? 'good' : seconds >= TURNING.hurried ? 'hurried' : 'none';
}

/**
 * The silence around the barline after each measure, by its ordinal. Every voice counts; cues and hidden notes do not sound. `assumedTempo` in
 * quarters a minute stands where the part gives none; repeats and fermatas are left out. After the last measure it is the silence before it alone.
 * Example: at 60 quarters a minute two whole measures of rest in 4/4 give `{ before: 4, after: 4 }` between them.
 */
export function turnRests(part: Part, assumedTempo: number): ReadonlyMap<number, TurnRest> {
  const { at } = tempoMap(part, assumedTempo);
  const sounding = part.measures
    .flatMap(({ start, notes }) => notes.filter(({ rest, cue, hidden, grace }) => !rest && !cue && !hidden && !grace).map(({ onset, duration }) => ({ from: quarters(start) + quarters(onset), to: quarters(start) + quarters(onset) + quarters(duration) })))
    .sort((a, b) => a.from - b.from);
  const rests = new Map<number, TurnRest>();
  let heard = 0;
  let next = 0;
  for (const { ordinal, start, length } of part.measures) {
    const bar = quarters(start) + quarters(length);
    for (; next < sounding.length && sounding[next]!.from < bar - 1e-9; next += 1) heard = Math.max(heard, sounding[next]!.to);
    const begins = sounding[next]?.from ?? bar;
    rests.set(ordinal, heard >= bar - 1e-9 && heard > 0 ? { before: 0, after: heard > bar + 1e-9 ? 0 : at(begins) - at(bar) } : { before: at(bar) - at(heard), after: at(begins) - at(bar) });
  }
  return rests;
}
