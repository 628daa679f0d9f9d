import type { Part } from '../music/part.ts';

const DIVIDES = /\b(div|divisi|getheilt|geteilt|divisés)\b/i;
const JOINS = /\b(unis|unisono|non div|a 2|zusammen)\b/i;

/** Ordinals of the measures in which the part says that it is divided, if only for some beats. Words only: two voices alone say nothing. */
export function dividedMeasures(part: Part): Set<number> {
  const divided = new Set<number>();
  let now = false;
  for (const { ordinal, words } of part.measures) {
    let here = now;
    for (const { text, at } of words) {
      if (JOINS.test(text)) {
        now = false;
        if (at === 0) here = false;
      } else if (DIVIDES.test(text)) here = now = true;
    }
    if (here) divided.add(ordinal);
  }
  return divided;
}
