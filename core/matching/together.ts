import type { Part } from '../music/part.ts';
import { type Line, type LineEvent, linesOf } from './line.ts';
import { isWithin, KEY, type Least, type Likeness, type Run, runOf } from './run.ts';

const order = (a: LineEvent, b: LineEvent): number => a.measure - b.measure || a.at - b.at;

/** Maximal stretches in which both lines have the same onsets, next to each other in both, and agree by `keyOf`. */
function stretches(a: Line, b: Line, least: number, keyOf: (event: LineEvent) => string): { a: number; b: number; length: number }[] {
  const found: { a: number; b: number; length: number }[] = [];
  let length = 0;
  const end = (i: number, j: number) => {
    if (length >= least) found.push({ a: i - length, b: j - length, length });
    length = 0;
  };
  let [i, j] = [0, 0];
  while (i < a.length && j < b.length) {
    const apart = order(a[i]!, b[j]!);
    if (apart === 0 && keyOf(a[i]!) === keyOf(b[j]!)) length += 1;
    else end(i, j);
    if (apart <= 0) i += 1;
    if (apart >= 0) j += 1;
  }
  end(i, j);
  return found;
}

/**
 * Where two parts of one score play the same music at the same time, measure against measure by ordinal: runs as long as they go, of at least `least`
 * notes. A run of one rhythm wholly inside a unison is not told again. Time grows with the notes. Order: unisons first, then by voices and time.
 * Example: violins in octaves through eight quarters give one unison of eight with `least` { unison: 6, rhythm: 16 }.
 */
export function playedTogether(a: Part, b: Part, least: Least): Run[] {
  const [linesA, linesB] = [linesOf(a), linesOf(b)];
  const runs = (likeness: Likeness): Run[] =>
    linesA.flatMap((lineA, atA) =>
      linesB.flatMap((lineB, atB) =>
        stretches(lineA, lineB, least[likeness], KEY[likeness]).map((found) => runOf(likeness, { lines: linesA, line: atA, first: found.a }, { lines: linesB, line: atB, first: found.b }, found.length)),
      ),
    );
  const unisons = runs('unison');
  return [...unisons, ...runs('rhythm').filter((run) => !unisons.some((unison) => isWithin(run, unison)))];
}
