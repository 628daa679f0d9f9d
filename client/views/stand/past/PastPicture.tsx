import type { ReactNode } from 'react';
import type { HistoryKind } from '../../../../core/agreement/measureHistory.ts';
import { words } from '../../../words/words.ts';
import type { PastShapes } from './pastShapes.ts';

/** Form says what it was, as everywhere: a disc for, a struck ring against, a bar into ink, a stroke through what was set aside. */
function Sign({ kind }: { kind: HistoryKind }): ReactNode {
  switch (kind) {
    case 'proposed':
      return <path className="pen" d="M0 -1V1" />;
    case 'revised':
      return <path className="pen" d="M-.25 -.8V.8M.25 -.8V.8" />;
    case 'for':
      return <circle className="full" cy={-1.1} r={0.5} />;
    case 'against':
      return (
        <>
          <circle className="ring" cy={1.1} r={0.5} />
          <path className="pen" d="M-.6 1.7L.6 .5" />
        </>
      );
    case 'voteTaken':
      return <path className="pen" d="M-.5 -1.1H.5" />;
    case 'adopted':
      return <path className="bar" d="M0 -1.2V1.2" />;
    case 'setAside':
      return <path className="pen" d="M-.9 1.1L.9 -1.1" />;
    case 'withdrawn':
      return <path className="pen" d="M0 -.7C.9 -.7 .9 .7 0 .7" />;
    case 'restored':
      return <path className="pen" d="M.8 -.6A1 1 0 1 0 .9 .4M.9 -1.4V-.6H.1" />;
    case 'said':
      return <path className="pen" d="M-.4 -1.5q.1 .5 -.2 .7M.3 -1.5q.1 .5 -.2 .7" />;
    case 'settled':
      return <path className="pen" d="M-.5 -1.1l.35 .4l.6 -.9" />;
  }
}

/** The slips of a measure as lines from left to right, with all that happened on them; the moment in focus in rosin. */
export function PastPicture({ shapes, name, dayOf, label, lit, onPoint }: { shapes: PastShapes; name(slip: string): string; dayOf(at: string): string; label: string; lit: number | null; onPoint(moment: number | null): void }): ReactNode {
  const { lanes, moments, days, width, height } = shapes;
  return (
    <svg className="music past-picture" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label} style={{ width: `calc(${width} * var(--sp))` }}>
      {days.map(({ x, at }, i) => (
        <g key={at} className="day">
          <path d={`M${x - 0.9} .4V${height}`} />
          {i > 0 && x - days[i - 1]!.x < 7 ? null : (
            <text x={x - 0.5} y={1.4}>
              {dayOf(at)}
            </text>
          )}
        </g>
      ))}
      {moments.map(({ x }, i) => (
        <rect key={i} className={lit === i ? 'caret' : 'hit'} x={x - 0.9} y={0.3} width={1.8} height={height - 0.4} onPointerEnter={() => onPoint(i)} onPointerLeave={() => onPoint(null)} />
      ))}
      {lanes.map(({ slip, y, x0, x1, ink, end }) => (
        <g key={slip} className={`lane ${end}`}>
          <text className="slipname" x={3.6} y={y + 0.6} textAnchor="end">
            {slip === null ? words.past.itself : name(slip)}
          </text>
          {slip === null ? null : <path className="lead" d={`M${x0} ${y}H${ink ?? x1}`} />}
          {ink === null ? null : <path className="inkline" d={`M${ink} ${y}H${x1}`} />}
        </g>
      ))}
      {moments.map(({ moment, x, y }, i) => (
        <g key={i} className="sign" data-moment={moment.kind} transform={`translate(${x.toFixed(2)} ${y.toFixed(2)})`}>
          <Sign kind={moment.kind} />
        </g>
      ))}
    </svg>
  );
}
