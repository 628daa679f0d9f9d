import type { EngravedSystem } from '../../../core/engraving/geometry.ts';
import type { EngravingSnapshot } from '../../engraving/engraving.ts';
import { factsSide, slipWindow } from './slipWindow.ts';

/** A stretch of another line that a passage goes on in, or began in; `reach` in its own staff spaces. */
export interface OtherLine {
  id: string;
  drawing: EngravedSystem;
  reach: { x0: number; x1: number };
  /** First and last measure of the passage on this line. */
  from: number;
  to: number;
}

/** The name under which a line's engraving is found again on the page. */
export const systemName = (system: number): string => `system-${system}`;

/** Where measures `from` to `to` stand on lines other than `here`, from the top; lines not drawn yet are left out. */
export function otherLines(systems: EngravingSnapshot['systems'], here: number, from: number, to: number): OtherLine[] {
  return systems.flatMap(({ first, last, drawing }, i) => {
    if (i === here || !drawing || last < from || first > to) return [];
    const [begin, end] = [Math.max(first, from), Math.min(last, to)];
    return [{ id: systemName(i), drawing, from: begin, to: end, reach: slipWindow(drawing.geometry, begin, [{ from: begin, to: end }]) }];
  });
}

/** Where another line's stretch is laid under this line's, in staff spaces: it begins where this one does, and is drawn smaller where it would run under the sentences or off the page. */
export function laidUnder(reach: { x0: number; x1: number }, width: number, other: OtherLine): { at: number; scale: number } {
  const side = factsSide(reach, width);
  const [at, end] = side === 'below' ? [0, width] : side === 'left' ? [reach.x0, width] : [reach.x0, reach.x1];
  return { at, scale: Math.min(1, (end - at) / (other.reach.x1 - other.reach.x0)) };
}
