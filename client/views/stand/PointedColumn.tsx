import type { ReactNode } from 'react';
import type { Geometry } from '../../../core/engraving/geometry.ts';
import { usePointed } from './pointed.ts';

/** The note under the pointer, wherever the pointer is: an outline of the column that the rosin would fill. */
export function PointedColumn({ geometry, y, height }: { geometry: Geometry; y: number; height: number }): ReactNode {
  const note = usePointed();
  const place = note === null ? undefined : geometry.notes[note];
  return place ? <rect className="pointed" data-pointed={note} x={place.x - 1.1} width={2.2} y={y} height={height} /> : null;
}
