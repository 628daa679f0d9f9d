import { memo, useMemo, type ReactNode } from 'react';
import { Marks } from '../../drawing/Marks.tsx';
import { placeMarks, type ShownMark } from '../../../core/engraving/marks/placeMarks.ts';
import { UNITS, type EngravedSystem } from '../../../core/engraving/geometry.ts';
import { extentOf } from '../../../core/engraving/marks/extent.ts';

interface Props {
  drawing: EngravedSystem;
  number: string;
  label: string;
  marks: readonly ShownMark[];
  /** The note in hand, where it stands in this line. */
  note: string | null;
  onPoint?: (note: string) => void;
}

/** A line of a changed place: the print, the marks over it, and the note in hand. */
export const Snippet = memo(function Snippet({ drawing, number, label, marks, note, onPoint }: Props): ReactNode {
  const { geometry } = drawing;
  const placed = useMemo(() => placeMarks(geometry, marks), [geometry, marks]);
  const { up, down, lift, drop } = extentOf(geometry, placed, false);
  const top = geometry.top - up;
  const height = up + down + geometry.bottom - geometry.top;
  const here = note === null ? undefined : geometry.notes[note];
  return (
    <svg
      className="music" role="img" aria-label={label} viewBox={`-4 ${top.toFixed(2)} ${(geometry.width + 4).toFixed(2)} ${height.toFixed(2)}`}
      style={{ '--lift': `${(-lift * UNITS).toFixed(0)}px`, '--drop': `${(drop * UNITS).toFixed(0)}px` } as object}
    >
      {here ? <rect className="band" x={here.x - 1.4} y={top} width="2.8" height={height} /> : null}
      <g className="sys" transform={`scale(${1 / UNITS})`} dangerouslySetInnerHTML={{ __html: drawing.inner }} />
      <text className="barno" x="-1" y={geometry.top - 0.6} textAnchor="end">
        {number}
      </text>
      <Marks placed={placed} />
      {onPoint ? Object.entries(geometry.notes).map(([id, { x }]) => <rect key={id} className="touch" data-note={id} x={x - 2} y={top} width="4" height={height} onClick={() => onPoint(id)} />) : null}
    </svg>
  );
});
