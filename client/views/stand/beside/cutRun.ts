import { linesOf } from '../../../../core/matching/line.ts';
import { runOf, type Run } from '../../../../core/matching/run.ts';
import type { Part } from '../../../../core/music/part.ts';

/** The part of a run whose notes of `b` are wanted; null where none is. Example: a run of eight notes and the last three of them in hand give a run of three. */
export function cutRun(run: Run, a: Part, b: Part, wanted: (note: string) => boolean): Run | null {
  const first = run.notes.findIndex(([, note]) => wanted(note));
  if (first < 0) return null;
  const last = run.notes.findLastIndex(([, note]) => wanted(note));
  const [placeA, placeB] = [{ lines: linesOf(a), line: run.a.line, first: run.a.first + first }, { lines: linesOf(b), line: run.b.line, first: run.b.first + first }];
  return runOf(run.likeness, placeA, placeB, last - first + 1);
}

/** The same run, seen from the other side. */
export const turnedRun = ({ likeness, a, b, notes }: Run): Run => ({ likeness, a: b, b: a, notes: notes.map(([one, other]) => [other, one] as const) });
