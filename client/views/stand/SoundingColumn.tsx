import type { ReactNode } from 'react';
import type { Geometry } from '../../../core/engraving/geometry.ts';
import { useSounding } from './pointed.ts';

/** The note that is heard: a line through it under a bar, which steps from note to note. */
export function SoundingColumn({ geometry, y, height }: { geometry: Geometry; y: number; height: number }): ReactNode {
  const note = useSounding();
  const place = note === null ? undefined : geometry.notes[note];
  return place ? <path className="sounding-now" data-sounding={note} d={`M${place.x - 1.1} ${y}h2.2v0.7h-2.2zM${place.x} ${y}v${height}`} /> : null;
}
