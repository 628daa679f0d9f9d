import { memo, useMemo, type ReactNode } from 'react';
import { Marks } from '../../../drawing/Marks.tsx';
import { placeMarks, type ShownMark } from '../../../../core/engraving/marks/placeMarks.ts';
import { UNITS, type EngravedSystem } from '../../../../core/engraving/geometry.ts';
import { extentOf } from '../../../../core/engraving/marks/extent.ts';

/** One line of the part as it goes on paper: the print, and what stands over it. As wide as the page lets it. */
export const PaperSystem = memo(function PaperSystem({ drawing, number, marks }: { drawing: EngravedSystem; number: string; marks: readonly ShownMark[] }): ReactNode {
  const { geometry } = drawing;
  const placed = useMemo(() => placeMarks(geometry, marks), [geometry, marks]);
  const { up, down, lift, drop } = extentOf(geometry, placed, false);
  const top = geometry.top - up;
  const height = up + down + geometry.bottom - geometry.top;
  return (
    <svg className="music" viewBox={`0 ${top.toFixed(2)} ${geometry.width.toFixed(2)} ${height.toFixed(2)}`} style={{ '--lift': `${(-lift * UNITS).toFixed(0)}px`, '--drop': `${(drop * UNITS).toFixed(0)}px` } as object}>
      <g className="sys" transform={`scale(${1 / UNITS})`} dangerouslySetInnerHTML={{ __html: drawing.inner }} />
      <text className="barno" x="-1" y={geometry.top - 0.6} textAnchor="end">
        {number}
      </text>
      <Marks placed={placed} />
    </svg>
  );
});
