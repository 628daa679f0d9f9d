import type { ReactNode } from 'react';
import type { SeatBow } from '../../../core/bowing/sectionBows.ts';

export const LANE = 5.9;
export const GAP = 2.3;

/** The part of the passage a line of music shows, seconds. */
export interface Span {
  start: number;
  end: number;
}

/** A bow along the hair as far as the line goes: upper line frog, lower line point. A down-bow goes down. */
export function zigzag(bows: readonly SeatBow[], x: (second: number) => number, span: Span): string {
  const y = ({ start, end, direction }: SeatBow, second: number) => {
    const share = (second - start) / (end - start);
    return ((direction === 'down' ? share : 1 - share) * LANE).toFixed(2);
  };
  return bows
    .filter(({ start, end }) => end > span.start && start < span.end)
    .map((bow) => {
      const [start, end] = [Math.max(bow.start, span.start), Math.min(bow.end, span.end)];
      return `M${x(start).toFixed(2)} ${y(bow, start)}L${x(end).toFixed(2)} ${y(bow, end)}`;
    })
    .join('');
}

export const isIn = (second: number, { start, end }: Span): boolean => second >= start && second < end;

/** Both partners' bows through a passage: outside solid with filled dots, inside dashed with open dots. */
export function Lane({ outside, inside, x, span, y }: { outside: readonly SeatBow[]; inside: readonly SeatBow[]; x: (second: number) => number; span: Span; y: number }): ReactNode {
  const [from, to] = [x(span.start), x(span.end)];
  const changes = (bows: readonly SeatBow[]) => bows.slice(1).filter(({ start }) => isIn(start, span));
  const start = ({ direction }: SeatBow) => (direction === 'down' ? 0 : LANE);
  return (
    <g transform={`translate(0 ${y})`}>
      <path className="frogline" d={`M${from} 0H${to}`} />
      <path className="pointline" d={`M${from} ${LANE}H${to}`} />
      <path className="ins" d={zigzag(inside, x, span)} />
      <path className="outs" d={zigzag(outside, x, span)} />
      {changes(inside).map((bow) => (
        <circle key={`i${bow.start}`} className="ci" cx={x(bow.start)} cy={start(bow)} r=".52" />
      ))}
      {changes(outside).map((bow) => (
        <circle key={`o${bow.start}`} className="co" cx={x(bow.start)} cy={start(bow)} r=".52" />
      ))}
    </g>
  );
}
