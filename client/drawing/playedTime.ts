import type { Seconds } from '../../core/music/seconds.ts';
import { quarters } from '../../core/music/time.ts';
import type { Geometry } from '../../core/engraving/geometry.ts';
import type { PartIndex } from '../library/partIndex.ts';

/** When measures begin, and when the last of them ends. */
export interface PlayedSpan {
  barlines: readonly { ordinal: number; second: Seconds }[];
  end: Seconds;
}

/** When a note begins; null for grace notes and outside the span. */
export function secondsOf({ barlines, end }: PlayedSpan, index: PartIndex): (note: string) => Seconds | null {
  const begins = new Map(barlines.map(({ ordinal, second }) => [ordinal, second]));
  return (note) => {
    const placed = index.notes.get(note);
    const start = placed && begins.get(placed.measure.ordinal);
    if (!placed || start === undefined || placed.note.grace) return null;
    const next = begins.get(placed.measure.ordinal + 1) ?? end;
    return start + (next - start) * (quarters(placed.note.onset) / quarters(placed.measure.length));
  };
}

/** x of a second, hung on the engraved notes' own x; straight between them. */
export function timeAxis(span: PlayedSpan, geometry: Geometry, index: PartIndex): (second: Seconds) => number {
  const at = secondsOf(span, index);
  const points = Object.entries(geometry.notes).flatMap(([id, { x }]): [second: Seconds, x: number][] => {
    const second = at(id);
    return second === null ? [] : [[second, x]];
  });
  const last = geometry.measures.at(-1);
  const end = last && span.barlines.find(({ ordinal }) => ordinal === last.ordinal + 1)?.second;
  points.push([end ?? span.end, last?.x1 ?? geometry.width]);
  points.sort(([a], [b]) => a - b);
  return (second) => {
    const after = points.findIndex(([at]) => at >= second);
    if (after < 0) return points.at(-1)![1];
    const [t1, x1] = points[after]!;
    const [t0, x0] = points[Math.max(0, after - 1)]!;
    return t1 === t0 ? x1 : x0 + ((x1 - x0) * (second - t0)) / (t1 - t0);
  };
}
