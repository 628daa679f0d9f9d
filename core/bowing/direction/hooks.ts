import type { StrokeFacts } from './facts.ts';

/** How much longer the first note of a hooked pair is at least, so that the pair is uneven: chosen, not measured. */
const UNEVEN = 1.9;

/** Whether a short note may be hooked onto the longer one before it: a dotted or an uneven pair, the short note weaker in the measure and without grace notes. Source: common practice. */
export function isHookable(before: StrokeFacts, stroke: StrokeFacts): boolean {
  return stroke.notes === 1 && stroke.stroke.pieces.length === 1 && stroke.level > before.level && before.quarters >= UNEVEN * stroke.quarters;
}
