import type { SectionView } from '../../../core/agreement/wire/http.ts';
import { seatsFor } from '../../../core/music/seat.ts';

export type Plan = { seat: string; person: string | null }[];

/** A seating as it is sent. */
export const planOf = ({ seats }: Pick<SectionView, 'seats'>): Plan => seats.map(({ seat, person }) => ({ seat, person: person?.id ?? null }));

/** A plan with one person at one seat; whoever sat elsewhere has moved. */
export function seated(plan: Plan, seat: string, person: string | null): Plan {
  return plan.map((place) => (place.seat === seat ? { seat, person } : place.person === person && person !== null ? { ...place, person: null } : place));
}

/** A plan with as many seats as asked for, filled front to back as before. */
export function resized(plan: Plan, seats: number): Plan {
  return seatsFor(seats).map((seat) => ({ seat, person: plan.find((place) => place.seat === seat)?.person ?? null }));
}
