import { useEffect, type ReactNode } from 'react';
import { Spectacles } from '../../../drawing/Spectacles.tsx';
import type { Geometry } from '../../../../core/engraving/geometry.ts';
import { words } from '../../../words/words.ts';
import { point } from '../pointed.ts';
import { PointedColumn } from '../PointedColumn.tsx';
import { HEIGHT, type DrawnBow } from './hairShapes.ts';

/** Room above the frog's line and below the point's. */
const OVER = 2;
const UNDER = 1.4;
/** The last of the hair at each end, where little is left. */
const TENTH = HEIGHT / 10;
/** mm between two places of the scale; none stands nearer than half of it to the point. */
const SCALE = 200;

const line = (points: DrawnBow['points']): string => `M${points.map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`;

function Bow({ drawn: { bow, points, ticks, lift, begins }, onNote }: { drawn: DrawnBow; onNote(note: string): void }): ReactNode {
  const first = points[0]!;
  const [before, last] = [points.at(-2)!, points.at(-1)!];
  const note = bow.notes[0]!;
  const near = { x: last.x + (before.x - last.x) * 0.25, y: last.y + (before.y - last.y) * 0.25 };
  const className = bow.short ? `bow ${bow.short.kind}` : bow.shared ? 'bow shared' : 'bow';
  return (
    <g className={className} data-bow={note} onClick={() => onNote(note)} onPointerEnter={() => point(note)} onPointerLeave={() => point(null)}>
      {lift ? <path className="lift" d={`M${lift.x0} ${lift.y0}Q${(lift.x0 + lift.x1) / 2} ${Math.min(lift.y0, lift.y1) - 1.2} ${lift.x1} ${lift.y1}`} /> : null}
      <path className="hit" d={line(points)} />
      <path className="drawn" d={line(points)} />
      {bow.short ? <path className="hollow" d={line(points)} /> : null}
      {bow.short?.kind === 'runs-out' ? <path className="end" d={line([near, last])} /> : null}
      {bow.short?.kind === 'wrong-end' && begins ? <circle className="start" cx={first.x} cy={first.y} r=".6" /> : null}
      {ticks.map(({ x, y }) => (
        <path key={x} className="tick" d={`M${x} ${y - 0.45}V${y + 0.45}`} />
      ))}
      {bow.short && begins ? <Spectacles x={(first.x + last.x) / 2} y={-1.1} scale={0.8} /> : null}
    </g>
  );
}

/** The bow along its hair under a line of music: upper line frog, lower line point; steeper is faster. */
export function HairPicture({ bows, hair, geometry, columns, label, onNote }: { bows: readonly DrawnBow[]; hair: number; geometry: Geometry; columns: readonly number[]; label: string; onNote(note: string): void }): ReactNode {
  // A picture that goes away under the pointer never hears it leave.
  useEffect(() => () => point(null), []);
  const left = bows[0]?.points[0]?.x ?? 0;
  const right = geometry.width;
  const height = OVER + HEIGHT + UNDER;
  const scale = Array.from({ length: Math.ceil(hair / SCALE - 0.5) - 1 }, (_, i) => (i + 1) * SCALE);
  return (
    <svg className="music hair" viewBox={`0 ${-OVER} ${right} ${height}`} role="img" aria-label={label} style={{ width: `calc(${right} * var(--sp))`, height: `calc(${height} * var(--sp))` }}>
      <rect className="tenth" x={left} width={right - left} y={0} height={TENTH} />
      <rect className="tenth" x={left} width={right - left} y={HEIGHT - TENTH} height={TENTH} />
      {columns.length ? <rect className="caret" x={Math.min(...columns) - 1.1} width={Math.max(...columns) - Math.min(...columns) + 2.2} y={-OVER} height={height} /> : null}
      <PointedColumn geometry={geometry} y={-OVER} height={height} />
      <path className="frogline" d={`M${left} 0H${right}`} />
      <path className="pointline" d={`M${left} ${HEIGHT}H${right}`} />
      <text className="lab" x={left - 1} y=".6" textAnchor="end">
        {words.hair.frog}
      </text>
      <text className="lab" x={left - 1} y={HEIGHT + 0.6} textAnchor="end">
        {words.hair.point}
      </text>
      {[...scale, hair].map((mm) => (
        <g key={mm} className="mm">
          {mm < hair ? <path d={`M${left} ${(mm / hair) * HEIGHT}H${right}`} /> : null}
          <text x={right + 0.5} y={(mm / hair) * HEIGHT + 0.5}>
            {mm}
          </text>
        </g>
      ))}
      <text className="lab" x={right + 0.5} y=".5">
        {words.hair.unit}
      </text>
      {bows.map((drawn) => (
        <Bow key={`${drawn.bow.begins} ${drawn.bow.notes[0]}`} drawn={drawn} onNote={onNote} />
      ))}
    </svg>
  );
}
