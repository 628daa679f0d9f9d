import { type Face, widthOf } from './faces.ts';

/** Lines of a text and the size they are set in. */
export interface Fitted {
  lines: string[];
  size: number;
}

/** A first line that ends with a stop may be this much less alike. Chosen, not measured. */
const AT_STOP = 0.75;

/** The two lines of a text broken at a space that are most alike in length, rather after a comma or a stop; itself alone where it has no space. */
function halves(text: string, face: Face): string[] {
  const words = text.split(' ');
  const breaks = words.slice(1).map((_, i) => [words.slice(0, i + 1).join(' '), words.slice(i + 1).join(' ')]);
  const longer = (lines: readonly string[]): number => Math.max(...lines.map((line) => widthOf(line, face, 1))) * (/[,.;:]$/.test(lines[0]!) ? AT_STOP : 1);
  return breaks.reduce((best, lines) => (longer(lines) < longer(best) ? lines : best), [text]);
}

/**
 * A text that must not be wider than `width`: on one line no smaller than `least`, otherwise on two as large as they fit. In the unit of `size`.
 * Example: a short title keeps its size.
 */
export function fitted(text: string, face: Face, width: number, { size, least }: { size: number; least: number }): Fitted {
  const sizeOf = (lines: readonly string[]): number => Math.min(size, ...lines.map((line) => width / widthOf(line, face, 1)));
  const whole = sizeOf([text]);
  if (whole >= least) return { lines: [text], size: whole };
  const lines = halves(text, face);
  return { lines, size: sizeOf(lines) };
}
