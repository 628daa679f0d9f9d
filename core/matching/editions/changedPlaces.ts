import type { Apart } from './editionsApart.ts';
import type { Moment } from './musicRow.ts';

/** Ordinals of a first and a last measure. */
export interface Measures {
  from: number;
  to: number;
}

/** Where two editions differ in what is played: the measures of both; null where one has nothing of it. */
export interface ChangedPlace {
  before: Measures | null;
  after: Measures | null;
}

const measuresOf = (moments: readonly Moment[]): Measures | null => (moments.length ? { from: moments[0]!.measure, to: moments.at(-1)!.measure } : null);
const touch = (a: Measures | null, b: Measures | null): boolean => a !== null && b !== null && b.from <= a.to;
const join = (a: Measures | null, b: Measures | null): Measures | null => (a && b ? { from: a.from, to: Math.max(a.to, b.to) } : (a ?? b));

/**
 * The places where two editions of a part differ, in order; differences in one measure are one place. Other barlines for the same notes are no difference.
 * Example: a note corrected in measure 7 gives `{ before: { from: 7, to: 7 }, after: { from: 7, to: 7 } }`.
 */
export function changedPlaces({ before, after, partner, isSame }: Apart): ChangedPlace[] {
  const places: ChangedPlace[] = [];
  let [old, now] = [0, 0];
  const close = (endOld: number, endNow: number) => {
    const place = { before: measuresOf(before.slice(old, endOld)), after: measuresOf(after.slice(now, endNow)) };
    const last = places.at(-1);
    if (last && (touch(last.before, place.before) || touch(last.after, place.after))) places[places.length - 1] = { before: join(last.before, place.before), after: join(last.after, place.after) };
    else if (place.before || place.after) places.push(place);
  };
  before.forEach((_, at) => {
    if (!isSame(at)) return;
    close(at, partner[at]!);
    [old, now] = [at + 1, partner[at]! + 1];
  });
  close(before.length, after.length);
  return places;
}
