import type { SeatId } from '../../core/music/seat.ts';

type Who = { id: string; name: string };

/** A seating as it is shown, from the seats there are and who is a member. */
export function seatingView(seats: readonly SeatId[], members: readonly { seat: SeatId | null; principal: boolean; person: Who }[]): { seats: { seat: SeatId; person: Who | null }[]; principal: Who | null } {
  const at = new Map(members.map((member) => [member.seat, member.person]));
  return { seats: seats.map((seat) => ({ seat, person: at.get(seat) ?? null })), principal: members.find((member) => member.principal)?.person ?? null };
}
