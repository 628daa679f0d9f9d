import Fraction from 'fraction.js';
import { exact } from '../../core/music/time.ts';
import { seatsFor } from '../../core/music/seat.ts';
import type { SpokenMark } from './slip.ts';

/** The held line: measures 47 to 52, six whole notes under one slur. */
const FIRST_MEASURE = 47;
const QUARTERS_A_MEASURE = 4;

/**
 * Where each desk changes in the first two measures, outside player first, in quarters from the beginning of the line; everybody
 * again two measures (eight seconds) later. Partners lie half a bow apart and no two players closer than half a second.
 */
const FIRST_CHANGE: [number, number][] = [[0.5, 4.5], [2.5, 6.5], [1.5, 5.5], [3.5, 7.5], [1, 5], [3, 7]];
const BOW = 8;

/** Desk 4 inside was written a third of a second from the partner in measure 49, so that the checker has something to say. */
const STRAY_SEAT = '4i';
const STRAY: Fraction[] = [new Fraction(15, 2), new Fraction(71, 6), new Fraction(18)];

function changesOf(desk: number, place: number): Fraction[] {
  const first = new Fraction(FIRST_CHANGE[desk]![place]!);
  return [first, first.add(BOW), first.add(2 * BOW)];
}

/** The staggered plan of twelve players as marks, each for one seat. */
export function staggeredPlan(): SpokenMark[] {
  return seatsFor(2 * FIRST_CHANGE.length).flatMap((seat, i) => {
    const changes = seat === STRAY_SEAT ? STRAY : changesOf(Math.floor(i / 2), i % 2);
    return changes.map((at): SpokenMark => {
      const measure = at.div(QUARTERS_A_MEASURE).floor();
      return [String(FIRST_MEASURE + Number(measure.valueOf())), 1, { kind: 'change', after: exact(at.sub(measure.mul(QUARTERS_A_MEASURE))) }, [seat]];
    });
  });
}
