import { UNITS } from './geometry.ts';

const HAIRPIN = /<g[^>]* class="hairpin[^"]*"[^>]*>((?:\s*<polyline\b[^>]*\/>)+)\s*<\/g>/g;
/** Staff spaces; no hairpin that is meant is shorter than the room of a note. Chosen, not measured. */
const LEAST = 1.5;

/**
 * A system's drawing without the tips of hairpins that only reach over from the line before, and look like accents.
 * Example: a hairpin that ends on the first note of a line leaves nothing there.
 */
export function withoutStubs(inner: string): string {
  return inner.replace(HAIRPIN, (group, lines: string) => {
    const xs = [...lines.matchAll(/(-?\d+),-?\d+/g)].map(([, x]) => Number(x));
    return Math.max(...xs) - Math.min(...xs) < LEAST * UNITS ? '' : group;
  });
}
