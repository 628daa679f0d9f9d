import type { BowEvent } from '../bowing/events.ts';
import { partnerOf, type SeatId } from '../music/seat.ts';
import type { CheckContext } from './context.ts';

/** A note that some seats are marked to begin up and others down. */
export interface BowedApart {
  event: BowEvent;
  up: SeatId[];
  down: SeatId[];
  /** Seats whose desk partner goes the other way. */
  splitDesks: SeatId[];
}

/**
 * Notes on which bows begin that are marked up for some seats and down for others, in order of the music. Left out: staggered passages, where everybody's
 * bow goes its own way, and tremolos. Example: up for all but down for 1i gives one, with the seats 1o and 1i as a split desk.
 */
export function bowedApart({ voices, groups, staggered }: CheckContext): BowedApart[] {
  if (groups.length < 2) return [];
  return voices.flatMap((voice, index) => {
    const ways = new Map<number, { up: SeatId[]; down: SeatId[] }>();
    for (const { seats, strokes } of groups) {
      for (const { begins, direction, tremolo } of strokes[index]!) {
        if (!direction || tremolo || begins.inside) continue;
        const way = ways.get(begins.event) ?? ways.set(begins.event, { up: [], down: [] }).get(begins.event)!;
        way[direction].push(...seats);
      }
    }
    return [...ways]
      .filter(([at, { up, down }]) => up.length && down.length && !staggered.some((passage) => passage.voice === index && passage.from <= at && at <= passage.to))
      .sort(([a], [b]) => a - b)
      .map(([at, { up, down }]) => ({ event: voice[at]!, up, down, splitDesks: [...up, ...down].filter((seat) => (up.includes(seat) ? down : up).includes(partnerOf(seat))) }));
  });
}
