import type { ReactNode } from 'react';
import type { Geometry } from '../../../core/engraving/geometry.ts';
import { usePointed } from './pointed.ts';

/** The note under the pointer, wherever the pointer is: an outline of the column that the rosin would fill. `reach`: how far the picture goes; a note beyond it has no column there. */
export function PointedColumn({ geometry, y, height, reach }: { geometry: Geometry; y: number; height: number; reach?: { x0: number; x1: number } }): ReactNode {
  const note = usePointed();
  const place = note === null ? undefined : geometry.notes[note];
  const outside = place && reach && (place.x < reach.x0 || reach.x1 < place.x);
  return place && !outside ? <rect className="pointed" data-pointed={note} x={place.x - 1.1} width={2.2} y={y} height={height} /> : null;
}
