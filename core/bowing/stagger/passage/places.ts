import type Fraction from 'fraction.js';
import type { Measure } from '../../../music/part.ts';
import type { Seconds } from '../../../music/seconds.ts';
import { type ExactTime, exact, fraction, quarters } from '../../../music/time.ts';
import { metreOf, metricLevel, pickupOf } from '../../../music/metre.ts';
import type { BowEvent, Voice } from '../../events.ts';
import type { Stretch } from './stretch.ts';

/** Where a bow may change: as a note begins, or inside a held one. */
export interface ChangePlace {
  /** Index of the event in its voice. */
  event: number;
  note: string;
  /** Quarters after the note begins. */
  after: ExactTime;
  /** Seconds from the start of the part. */
  second: Seconds;
  measure: number;
  /** Quarters from the start of the measure. */
  at: number;
  onBarline: boolean;
  onBeat: boolean;
}

/** A grid finer than this cannot be aimed at; chosen, not measured. */
const FINEST: Seconds = 0.2;

/** Quarters between two places inside held notes: a part of the beat, halved while that can be aimed at. */
function stepIn(measure: Measure, event: BowEvent): Fraction {
  const { beat, parts } = metreOf(measure);
  const part = fraction(beat).div(parts);
  const seconds = (part.valueOf() * (event.end - event.start)) / (event.to - event.from);
  const halvings = Math.max(0, Math.floor(Math.log2(seconds / FINEST) + 1e-9));
  return part.div(2 ** halvings);
}

function insideNote(measure: Measure, event: BowEvent): ExactTime[] {
  const { onset, duration } = event.head;
  if (quarters(duration) < metreOf(measure).beat) return [];
  const step = stepIn(measure, event);
  const pickup = pickupOf(measure);
  const places: ExactTime[] = [];
  const first = fraction(onset).add(pickup).div(step).floor().add(1);
  for (let k = first; ; k = k.add(1)) {
    const after = k.mul(step).sub(pickup).sub(fraction(onset));
    if (after.compare(fraction(duration).sub(step)) > 0) return places;
    // Beside the beginning of a note the change would sound like a wrong rhythm.
    if (after.compare(step) >= 0) places.push(exact(after));
  }
}

/**
 * Every place inside a stretch where a player may change bow, in order of time: the beginnings of its notes but the first, and inside notes of a beat or
 * longer the parts of the beat, as fine as 0.2 s where that is still a halving; not nearer than one such part to the note's beginning or end.
 * @param measures of the part, by ordinal from 1
 * Example: a whole note in 4/4 at 60 quarters a minute has places every quarter of a beat from 1/4 to 15/4.
 */
export function placesIn(voice: Voice, { from, to }: Stretch, measures: readonly Measure[]): ChangePlace[] {
  const places: ChangePlace[] = [];
  for (let e = from; e <= to; e++) {
    const event = voice[e]!;
    if (event.to <= event.from) continue;
    const measure = measures[event.measure - 1]!;
    for (const after of [...(e > from ? [0] : []), ...insideNote(measure, event)]) {
      const at = quarters(event.head.onset) + quarters(after);
      const second = event.start + (quarters(after) / (event.to - event.from)) * (event.end - event.start);
      const level = metricLevel(measure, at);
      places.push({ event: e, note: event.head.id, after, second, measure: event.measure, at, onBarline: at === 0 || level === 0, onBeat: level <= 2 });
    }
  }
  return places;
}
