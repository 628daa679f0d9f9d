import { excludes, type Mark } from '../music/mark.ts';
import type { Seats } from '../music/seat.ts';
import type { Stamp, StandingMark } from './state.ts';

/** Marks to ink in together: a proposal that is adopted, or one that is tried out. */
export interface Inking {
  proposal: string;
  why: string;
  seats: Seats;
  marks: readonly Mark[];
  /** Measure ordinal of each mark, in the order of `marks`. */
  measures: readonly number[];
}

/** Ink by its place in the list of everything ever inked in, with the ordinal of its measure. */
export interface InkMoved {
  ink: number;
  measure: number;
}

/** True when every seat of `inner` is one of `outer`; "all" of the section is covered by "all" only. Example: `covers('all', ['1o'])`. */
export function covers(outer: Seats, inner: Seats): boolean {
  return outer === 'all' || (inner !== 'all' && inner.every((seat) => outer.includes(seat)));
}

/**
 * Inks `inking` into `ink`, in place: its marks stand, and supersede what stood in the same slot of the same note for the same or fewer seats.
 * A wider mark keeps standing under a narrower one, for the seats the narrower one leaves (`inForce` resolves that).
 * Invariants: no mark is lost or moved, `superseded` is set once, and the marks themselves are replaced, never changed.
 * Example: `inkInto(ink, { proposal, why, seats: 'all', marks, measures: [1] }, stamp)`.
 */
export function inkInto(ink: StandingMark[], inking: Inking, stamp: Stamp): void {
  const byNote = new Map<string, StandingMark[]>();
  const fresh = inking.marks.map((mark, index): StandingMark => {
    const one = { mark, seats: mark.seats ?? inking.seats, measure: inking.measures[index]!, proposal: inking.proposal, why: inking.why, inked: stamp, superseded: null };
    byNote.set(mark.note, [...(byNote.get(mark.note) ?? []), one]);
    return one;
  });
  const superseded = { ...stamp, proposal: inking.proposal, why: inking.why };
  ink.forEach((old, index) => {
    if (old.superseded) return;
    const over = byNote.get(old.mark.note)?.some((one) => excludes(one.mark.value, old.mark.value) && covers(one.seats, old.seats));
    if (over) ink[index] = { ...old, superseded };
  });
  ink.push(...fresh);
}
