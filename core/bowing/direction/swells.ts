import type { Part } from '../../music/part.ts';
import { quarters } from '../../music/time.ts';

/** A stretch that grows louder (1) or softer (-1), in quarters from the start of the part. */
export interface Swell {
  from: number;
  to: number;
  sign: 1 | -1;
}

const SIGNS: Record<string, 1 | -1> = { crescendo: 1, diminuendo: -1 };

/**
 * The hairpins of a part, in order of their beginning; one that is never closed lasts to the end of its measure.
 * Words ("cresc.") are left out: they do not say how far they reach.
 */
export function swellsOf(part: Part): Swell[] {
  const swells: Swell[] = [];
  let open: Swell | null = null;
  for (const measure of part.measures) {
    const start = quarters(measure.start);
    for (const { type, at } of measure.wedges) {
      const here = start + quarters(at);
      if (open) open.to = here;
      open = null;
      const sign = SIGNS[type];
      if (!sign) continue;
      open = { from: here, to: start + quarters(measure.length), sign };
      swells.push(open);
    }
  }
  return swells;
}

/** Whether the music grows (1), falls (-1) or neither (0) through more than half of a stretch. `swells` in order. Example: a hairpin over three of four quarters counts. */
export function swellOver(swells: readonly Swell[], from: number, to: number): 1 | 0 | -1 {
  let sum = 0;
  for (const swell of swells) {
    if (swell.from >= to) break;
    sum += swell.sign * Math.max(0, Math.min(to, swell.to) - Math.max(from, swell.from));
  }
  return Math.abs(sum) > (to - from) / 2 ? (sum > 0 ? 1 : -1) : 0;
}
