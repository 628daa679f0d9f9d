import type { SectionPassage } from '../../../core/bowing/sectionBows.ts';
import { quarters } from '../../../core/music/time.ts';
import type { Geometry } from '../../engraving/geometry.ts';
import type { PartIndex } from '../../library/partIndex.ts';

/** x of a second of the passage, hung on the engraved notes' own x; straight between them. */
export function timeAxis(passage: SectionPassage, geometry: Geometry, index: PartIndex): (second: number) => number {
  const begins = new Map(passage.barlines.map(({ ordinal, second }) => [ordinal, second]));
  const points: [second: number, x: number][] = [];
  for (const [id, { x }] of Object.entries(geometry.notes)) {
    const placed = index.notes.get(id);
    const start = placed && begins.get(placed.measure.ordinal);
    if (!placed || start === undefined || placed.note.grace) continue;
    const next = begins.get(placed.measure.ordinal + 1) ?? passage.end;
    const share = quarters(placed.note.onset) / quarters(placed.measure.length);
    points.push([start + (next - start) * share, x]);
  }
  points.push([passage.end, geometry.measures.at(-1)?.x1 ?? geometry.width]);
  points.sort(([a], [b]) => a - b);
  return (second) => {
    const after = points.findIndex(([at]) => at >= second);
    if (after < 0) return points.at(-1)![1];
    const [t1, x1] = points[after]!;
    const [t0, x0] = points[Math.max(0, after - 1)]!;
    return t1 === t0 ? x1 : x0 + ((x1 - x0) * (second - t0)) / (t1 - t0);
  };
}
