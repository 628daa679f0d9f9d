import type { PlacedMarks } from '../../drawing/placeMarks.ts';
import type { Box, Geometry } from '../../engraving/geometry.ts';

const LEAST = { up: 6.2, down: 5.6 };

const highest = (boxes: readonly Box[]) => Math.min(...boxes.map(({ y0 }) => y0), Infinity);
const lowest = (boxes: readonly Box[]) => Math.max(...boxes.map(({ y1 }) => y1), -Infinity);

/** How far printed words have to give way so that the section's marks stand nearest the notes; staff spaces. */
function yielding(words: readonly Box[], signs: PlacedMarks['signs'], side: 'above' | 'below', staff: number): number {
  let needed = 0;
  for (const word of words) {
    for (const { x, y } of signs) {
      const above = y < staff;
      if (above !== (side === 'above') || x < word.x0 - 1 || x > word.x1 + 1) continue;
      needed = Math.max(needed, side === 'above' ? word.y1 - (y - 2.1) : y + 0.6 - word.y0);
    }
  }
  return needed;
}

/** Room a system takes above its first and below its last staff line, and how far its words are moved out of the way. */
export function extentOf(geometry: Geometry, placed: PlacedMarks, bracketed: boolean): { up: number; down: number; lift: number; drop: number } {
  const lift = yielding(geometry.high, placed.signs, 'above', geometry.top);
  const drop = yielding(geometry.low, placed.signs, 'below', geometry.bottom);
  const brackets = bracketed ? 3.4 : 0;
  const up = Math.max(LEAST.up, geometry.top - Math.min(highest(geometry.near), highest(geometry.high) - lift, placed.top - brackets) + 1.2);
  const down = Math.max(LEAST.down, Math.max(lowest(geometry.near), lowest(geometry.low) + drop, placed.bottom) - geometry.bottom + 2);
  return { up, down, lift, drop };
}
