import { z } from 'zod';
import type { SeatId } from '../music/seat.ts';

/** What a person does in a section. One person may have several. */
export const Role = z.enum(['principal', 'player', 'librarian']);
export type Role = z.infer<typeof Role>;

/** Who asks for an operation, as the committing server knows it at that moment. */
export interface Actor {
  id: string;
  name: string;
  roles: Role[];
  /** Seat in the part's section, if any. */
  seat: SeatId | null;
}
