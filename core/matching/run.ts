import type { Line, LineEvent } from './line.ts';

/** unison: the same rhythm and pitch classes · rhythm: the same rhythm and slurs, other pitches. */
export type Likeness = 'unison' | 'rhythm';

/** How many notes in a row must agree before a run counts, by likeness. */
export type Least = Record<Likeness, number>;

export interface Stretch {
  /** Place of its line among those of the part. */
  line: number;
  /** Index in the line of its first event. */
  first: number;
  /** Ordinals of its first and last measure. */
  from: number;
  to: number;
}

/** A passage of one part and the same music in another part, or elsewhere in the same one. */
export interface Run {
  likeness: Likeness;
  a: Stretch;
  b: Stretch;
  /** Note ids, that of `a` and that of `b`, in order of time. */
  notes: readonly (readonly [a: string, b: string])[];
}

/** What two events must share, the time of their onset aside. */
export const KEY: Record<Likeness, (event: LineEvent) => string> = {
  unison: ({ pitches, lasts, tremolo }) => `${lasts}:${pitches}:${tremolo}`,
  rhythm: ({ lasts, bound, tremolo }) => `${lasts}:${bound ? 'bound' : ''}:${tremolo}`,
};

export interface LinePlace {
  lines: readonly Line[];
  line: number;
  first: number;
}

const stretchOf = ({ lines, line, first }: LinePlace, length: number): Stretch => ({ line, first, from: lines[line]![first]!.measure, to: lines[line]![first + length - 1]!.measure });

/** The run of `length` events that begins at two places. `length` at least 1 and within both lines. */
export function runOf(likeness: Likeness, a: LinePlace, b: LinePlace, length: number): Run {
  const [lineA, lineB] = [a.lines[a.line]!, b.lines[b.line]!];
  return {
    likeness,
    a: stretchOf(a, length),
    b: stretchOf(b, length),
    notes: Array.from({ length }, (_, i) => [lineA[a.first + i]!.head.id, lineB[b.first + i]!.head.id] as const),
  };
}

/** True when every pair of notes of `inner` stands in `outer`. */
export function isWithin(inner: Run, outer: Run): boolean {
  const offset = inner.a.first - outer.a.first;
  return (
    inner.a.line === outer.a.line && inner.b.line === outer.b.line && inner.b.first - outer.b.first === offset && offset >= 0 && offset + inner.notes.length <= outer.notes.length
  );
}
