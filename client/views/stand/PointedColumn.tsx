import type { ReactNode } from 'react';
import type { Geometry } from '../../engraving/geometry.ts';
import { usePointed, useSounding } from './pointed.ts';

/** The note under the pointer, wherever the pointer is: an outline of the column that the rosin would fill; and the note that is heard, under a bar. */
export function PointedColumn({ geometry, y, height }: { geometry: Geometry; y: number; height: number }): ReactNode {
  const [note, heard] = [usePointed(), useSounding()];
  const place = note === null ? undefined : geometry.notes[note];
  const sounding = heard === null ? undefined : geometry.notes[heard];
  return (
    <>
      {place ? <rect className="pointed" data-pointed={note} x={place.x - 1.1} width={2.2} y={y} height={height} /> : null}
      {sounding ? <path className="sounding-now" data-sounding={heard} d={`M${sounding.x - 1.1} ${y}h2.2v0.7h-2.2zM${sounding.x} ${y}v${height}`} /> : null}
    </>
  );
}
