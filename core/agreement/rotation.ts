import { deskOf, isOutside, type SeatId } from '../music/seat.ts';

interface Place {
  seat: SeatId;
  person: string | null;
}

/**
 * A seating with the desks `from` to `to` moved back by one: who sat at one of them sits at the next, outside or inside as before, and the last
 * of them comes to the front of the row. Desks of one seat stay, since two players cannot go there; desks outside the row stay too.
 * Invariants: the same seats and the same people; as many moves as there are moving desks give the seating back.
 * Source: rotation of the desks behind the first, common practice, no source.
 * Example: with desks A B C D and the row 2 to 4 it is A D B C.
 */
export function rotated(plan: readonly Place[], from: number, to: number): Place[] {
  const desks = movingDesks(plan, from, to);
  const before = (desk: number): number => desks[(desks.indexOf(desk) + desks.length - 1) % desks.length]!;
  return plan.map((place) => {
    const desk = deskOf(place.seat);
    if (!desks.includes(desk)) return place;
    const seat = `${before(desk)}${isOutside(place.seat) ? 'o' : 'i'}`;
    return { seat: place.seat, person: plan.find((other) => other.seat === seat)!.person };
  });
}

/** The desks of a row that change places: those with two seats, front to back. Example: `movingDesks(plan, 2, 4)` is [2, 3] where desk 4 has one seat. */
export function movingDesks(plan: readonly { seat: SeatId }[], from: number, to: number): number[] {
  const desks = [...new Set(plan.map(({ seat }) => deskOf(seat)))].sort((a, b) => a - b);
  return desks.filter((desk) => desk >= from && desk <= to && plan.filter(({ seat }) => deskOf(seat) === desk).length === 2);
}
