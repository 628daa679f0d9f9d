import type { Part } from '../../music/part.ts';
import { editionsApart } from './editionsApart.ts';
import { measuresNow } from './measuresNow.ts';
import { realign, type Realigned } from './realign.ts';

export interface LaidOver extends Realigned {
  /** Ordinal that each measure of the older edition has now (`measuresNow`); null where none has moved. */
  measures: number[] | null;
}

/** `realign`, and where the measures are now. Example: after one note was corrected `measures` is null. */
export function layOver(next: Part, previous: Part, generation: number): LaidOver {
  const apart = editionsApart(previous, next);
  const measures = measuresNow(apart, previous.measures.length, next.measures.length);
  return { ...realign(next, previous, generation, apart), measures: measures.every((now, i) => now === i + 1) ? null : measures };
}
