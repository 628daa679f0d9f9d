import { memo, useMemo, type ReactNode } from 'react';
import { Marks } from '../../../drawing/Marks.tsx';
import { placeMarks, type ShownMark } from '../../../../core/engraving/marks/placeMarks.ts';
import { UNITS, type EngravedSystem } from '../../../../core/engraving/geometry.ts';
import { extentOf } from '../../../../core/engraving/marks/extent.ts';

interface Props {
  drawing: EngravedSystem;
  number: string;
  marks: readonly ShownMark[];
  /** What it is, where it is read by itself. */
  label?: string;
  /** Room before the line for its number, staff spaces; on paper the margin has it. */
  before?: number;
  /** The note in hand, where it stands in this line. */
  inHand?: string | null;
  onPoint?: ((note: string) => void) | undefined;
}

/** One line of a part as it goes on paper: the print, and what stands over it. As wide as the page lets it. */
export const PaperSystem = memo(function PaperSystem({ drawing, number, marks, label, before = 0, inHand = null, onPoint }: Props): ReactNode {
  const { geometry } = drawing;
  const placed = useMemo(() => placeMarks(geometry, marks), [geometry, marks]);
  const { up, down, lift, drop } = extentOf(geometry, placed, false);
  const top = geometry.top - up;
  const height = up + down + geometry.bottom - geometry.top;
  const here = inHand === null ? undefined : geometry.notes[inHand];
  return (
    <svg
      className="music" {...(label ? { role: 'img', 'aria-label': label } : {})} viewBox={`${-before} ${top.toFixed(2)} ${(geometry.width + before).toFixed(2)} ${height.toFixed(2)}`}
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
