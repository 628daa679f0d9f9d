import type { StaggerPlayer } from '../problem.ts';

/** Points for each shortest window (the crowd's, 0.25 s) in which both neighbours change; chosen, not measured. */
export const NEIGHBOUR = 8;

/** True for players who sit one behind the other on the same side. Example: outside of desks 2 and 3. */
export function areNeighbours(a: StaggerPlayer, b: StaggerPlayer): boolean {
  return a.seat === b.seat && Math.abs(a.desk - b.desk) === 1;
}
