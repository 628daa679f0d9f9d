import type { PlacedMarks } from './placeMarks.ts';
import type { Box, Geometry } from '../geometry.ts';

/** What is nearer than this side by side is in the way too. Staff spaces; chosen, not measured. */
const BESIDE = 0.3;

const LEAST = { up: 6.2, down: 5.6 };

const highest = (boxes: readonly Box[]) => Math.min(...boxes.map(({ y0 }) => y0), Infinity);
const lowest = (boxes: readonly Box[]) => Math.max(...boxes.map(({ y1 }) => y1), -Infinity);

/** Something of the section's that printed words must not stand in: outermost y between two x. */
interface Obstacle {
  x0: number;
  x1: number;
  y: number;
}

const around = (x: number, half: number, y: number): Obstacle => ({ x0: x - half, x1: x + half, y });

/** How far printed words have to give way so that the section's marks stand nearest the notes; staff spaces. */
function yielding(words: readonly Box[], obstacles: readonly Obstacle[], side: 'above' | 'below'): number {
  let needed = 0;
  for (const word of words) {
    for (const { x0, x1, y } of obstacles) {
      if (x1 < word.x0 - BESIDE || x0 > word.x1 + BESIDE) continue;
      needed = Math.max(needed, side === 'above' ? word.y1 - y : y - word.y0);
    }
  }
  return needed;
}

/** Room a system takes above its first and below its last staff line, and how far its words are moved out of the way. */
export function extentOf(geometry: Geometry, placed: PlacedMarks, bracketed: boolean): { up: number; down: number; lift: number; drop: number } {
  const above = placed.signs.filter(({ y }) => y < geometry.top).map(({ x0, x1, y, height }) => ({ x0, x1, y: y - height - 0.35 }));
  const below = placed.signs.filter(({ y }) => y >= geometry.bottom).map(({ x0, x1, y }) => ({ x0, x1, y: y + 0.6 }));
  const watching = placed.spectacles.map(({ x, y }) => around(x, 1.9, y - 0.7));
  const lift = yielding(geometry.high, [...above, ...watching], 'above');
  const drop = yielding(geometry.low, below, 'below');
  const brackets = bracketed ? 3.4 : 0;
  const up = Math.max(LEAST.up, geometry.top - Math.min(highest(geometry.near), highest(geometry.high) - lift, placed.top - brackets) + 1.2);
  const down = Math.max(LEAST.down, Math.max(lowest(geometry.near), lowest(geometry.low) + drop, placed.bottom) - geometry.bottom + 2);
  return { up, down, lift, drop };
}
