import type { Geometry } from '../../../core/engraving/geometry.ts';

/** The stretch of a system that slips show: every measure of it that one of them covers. */
export function slipWindow(geometry: Geometry, measure: number, slips: readonly { from: number; to: number }[]): { x0: number; x1: number } {
  const from = Math.min(measure, ...slips.map((slip) => slip.from));
  const to = Math.max(measure, ...slips.map((slip) => slip.to));
  const covered = geometry.measures.filter(({ ordinal }) => ordinal >= from && ordinal <= to);
  return { x0: Math.min(...covered.map(({ x0 }) => x0), geometry.width), x1: Math.max(...covered.map(({ x1 }) => x1), 0) };
}

/** Narrowest column the sentences can be read in, staff spaces; chosen, not measured. */
const LEAST = 38;

/** Where the sentences stand: beside the slips on the wider side, or under each slip where neither side has room. Staff spaces. */
export function factsSide({ x0, x1 }: { x0: number; x1: number }, width: number): 'left' | 'right' | 'below' {
  const [left, right] = [x0, width - x1];
  if (Math.max(left, right) < LEAST) return 'below';
  return right >= left ? 'right' : 'left';
}
