import type { Box, Geometry } from '../engraving/geometry.ts';
import type { PlacedMarks } from '../engraving/marks/placeMarks.ts';

/** How far a system reaches above its first and below its last staff line, column by column; staff spaces. */
export interface Profile {
  up: Float64Array;
  down: Float64Array;
}

/** Columns a staff space wide. */
const COLUMN = 1;
/** A clef without anything over it. */
const CLEF = { up: 1.7, down: 1.7 };

/** What a system covers: notes, marks, words (`words`) and what else stands there (`others`), as they stand. Example: an empty staff is as high as its clef. */
export function profileOf({ width, top, bottom, near }: Geometry, placed: PlacedMarks, words: readonly { box: Box }[], others: readonly Box[]): Profile {
  const columns = Math.ceil(width / COLUMN) + 2;
  const profile = { up: new Float64Array(columns).fill(CLEF.up), down: new Float64Array(columns).fill(CLEF.down) };
  const paint = ({ x0, x1, y0, y1 }: Box) => {
    for (let i = Math.max(0, Math.floor(x0 / COLUMN)); i <= Math.min(columns - 1, Math.floor(x1 / COLUMN)); i += 1) {
      profile.up[i] = Math.max(profile.up[i]!, top - y0);
      profile.down[i] = Math.max(profile.down[i]!, y1 - bottom);
    }
  };
  near.forEach(paint);
  for (const { box } of words) paint(box);
  others.forEach(paint);
  for (const { x0, x1, y, height } of placed.signs) paint({ x0, x1, y0: y - height, y1: y });
  return profile;
}

/** The most of a profile between two x. Example: `most(profile.up, 0, width)` is how high the system reaches. */
export function most(side: Float64Array, x0 = 0, x1 = Infinity): number {
  let furthest = 0;
  const end = Math.min(side.length - 1, Math.floor(x1 / COLUMN));
  for (let i = Math.max(0, Math.floor(x0 / COLUMN)); i <= end; i += 1) furthest = Math.max(furthest, side[i]!);
  return furthest;
}

/** Least distance from the last staff line of one system to the first of the next: `gap` clear everywhere, never under `apart`. */
export function distanceBetween(above: Profile, below: Profile, { gap, apart }: { gap: number; apart: number }): number {
  let distance = apart;
  const columns = Math.min(above.down.length, below.up.length);
  for (let i = 0; i < columns; i += 1) {
    // What hangs down and what stands up keep clear of each other a column to either side too.
    const up = Math.max(below.up[i]!, below.up[i - 1] ?? 0, below.up[i + 1] ?? 0);
    distance = Math.max(distance, above.down[i]! + up + gap);
  }
  return distance;
}
