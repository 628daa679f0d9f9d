import { isOutside, type Seats } from '../../core/music/seat.ts';
import type { Lens } from '../../core/engraving/marks/placeMarks.ts';

/** Which lens is dark for a finding about these seats. */
export function lensOf(seats: Seats): Lens {
  if (seats === 'all') return 'both';
  const outside = seats.some(isOutside);
  const inside = seats.some((seat) => !isOutside(seat));
  return outside && inside ? 'both' : outside ? 'outside' : 'inside';
}
