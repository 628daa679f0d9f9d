import { turnKind, type TurnRest } from './turns.ts';

/** What is weighed when music is laid on pages. All weights: chosen, not measured. */
const TURN = { good: 0, hurried: 4, none: 10 } as const;
/** A further page, which is paper to carry and perhaps a turn. */
export const PAGE = 2;
/** A page with the title alone, which the music begins behind: more than a turn in a hurry, less than one without a rest. */
export const TITLE_PAGE = 5;
/** A last line, or a last page, that is filled less than this looks forgotten; at nothing it costs so much. */
const FORGOTTEN = { line: 0.4, page: 0.3, cost: 2 };
/** A page that cannot hold even one line. */
const OVERFULL = 1000;

/** How far notes may stand closer, and how loose a line may be, than they come by themselves. */
const CLOSEST = 1.08;
const LOOSEST = 0.55;

const forgotten = (filled: number, least: number): number => FORGOTTEN.cost * Math.max(0, 1 - filled / least);

/**
 * Cost of a line whose music wants `width` where the line has `line`; Infinity where it may not be. `longer`: the width with one more block, Infinity
 * where there is none or the line has to end. `ends`: the last line of the part, which is not stretched but should hold more than a measure or two. `single`: one block, which cannot be broken.
 * Example: a line that fits exactly costs 0.
 */
export function lineCost(width: number, line: number, { longer, ends, single }: { longer: number; ends: boolean; single: boolean }): number {
  const filled = width / line;
  if (filled > CLOSEST && !single) return Infinity;
  if (filled > 1) return ((filled - 1) / 0.04) ** 2 * 0.3;
  if (ends) return forgotten(filled, FORGOTTEN.line);
  if (filled < LOOSEST && longer / line <= CLOSEST) return Infinity;
  return ((1 - filled) / 0.18) ** 2 * 0.3;
}

/** Cost of a page `height` high of which the music needs `used`. Little for the last page, which may be short. Example: a full page costs 0. */
export function emptyCost(used: number, height: number, last: boolean): number {
  if (used > height) return OVERFULL;
  return last ? forgotten(used / height, FORGOTTEN.page) : 6 * ((height - used) / height) ** 2;
}

/** Cost of turning a page in a silence. Example: a turn in peace costs 0. */
export const turnCost = (rest: TurnRest): number => TURN[turnKind(rest)];
