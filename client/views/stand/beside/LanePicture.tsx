import type { ReactNode } from 'react';
import { MarkSign } from '../../../drawing/MarkSign.tsx';
import type { Geometry } from '../../../../core/engraving/geometry.ts';
import { PointedColumn } from '../PointedColumn.tsx';
import type { LaneBow } from './bowLanes.ts';

const HEIGHT = 4.4;
/** Where the bow's line lies; its sign stands above. */
const LINE = 3.4;

/** The bows of one section on this part's notes' own x: a sign where each begins, solid where it is marked, pencilled where it is worked out; crossed where it goes against mine. */
export function LanePicture({ bows, against, geometry, columns, label }: { bows: readonly LaneBow[]; against: readonly LaneBow[]; geometry: Geometry; columns: readonly number[]; label: string }): ReactNode {
  return (
    <svg className="music lane" viewBox={`0 0 ${geometry.width} ${HEIGHT}`} role="img" aria-label={label} style={{ width: `calc(${geometry.width} * var(--sp))`, height: `calc(${HEIGHT} * var(--sp))` }}>
      {columns.length ? <rect className="caret" x={Math.min(...columns) - 1.1} width={Math.max(...columns) - Math.min(...columns) + 2.2} y="0" height={HEIGHT} /> : null}
      <PointedColumn geometry={geometry} y={0} height={HEIGHT} />
      {geometry.measures.map(({ ordinal, x1 }) => (
        <path key={ordinal} className="down" d={`M${x1} 1V${HEIGHT}`} />
      ))}
      {bows.map((lane) => (
        <g key={lane.at} className={against.includes(lane) ? 'against' : undefined}>
          <path className="stroke" d={`M${lane.x0} ${LINE}H${Math.max(lane.x0 + 0.4, lane.x1 - 0.6)}`} />
          {lane.begins ? <MarkSign stroke={lane.bow.direction} state={lane.bow.marked ? 'adopted' : 'proposed'} x={lane.x0} y={LINE - 0.7} scale={0.9} /> : null}
          {against.includes(lane) ? <path className="cross" d={`M${lane.x0 - 0.5} ${LINE - 0.5}l1 1m0-1l-1 1`} /> : null}
        </g>
      ))}
    </svg>
  );
}
