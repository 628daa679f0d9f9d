import type { ReactNode } from 'react';
import type { SeatBow } from '../../../core/bowing/sectionBows.ts';

export const LANE = 5.9;
export const GAP = 2.3;

/** A bow along the hair: upper line frog, lower line point. A down-bow goes down. */
function zigzag(bows: readonly SeatBow[], x: (second: number) => number): string {
  const y = (bow: SeatBow, end: boolean) => ((bow.direction === 'down') === end ? LANE : 0);
  return bows.map((bow) => `M${x(bow.start).toFixed(2)} ${y(bow, false)}L${x(bow.end).toFixed(2)} ${y(bow, true)}`).join('');
}

/** Both partners' bows through a passage: outside solid with filled dots, inside dashed with open dots. */
export function Lane({ outside, inside, x, from, to, y }: { outside: readonly SeatBow[]; inside: readonly SeatBow[]; x: (second: number) => number; from: number; to: number; y: number }): ReactNode {
  const start = ({ direction }: SeatBow) => (direction === 'down' ? 0 : LANE);
  return (
    <g transform={`translate(0 ${y})`}>
      <path className="frogline" d={`M${from} 0H${to}`} />
      <path className="pointline" d={`M${from} ${LANE}H${to}`} />
      <path className="ins" d={zigzag(inside, x)} />
      <path className="outs" d={zigzag(outside, x)} />
      {inside.slice(1).map((bow) => (
        <circle key={`i${bow.start}`} className="ci" cx={x(bow.start)} cy={start(bow)} r=".52" />
      ))}
      {outside.slice(1).map((bow) => (
        <circle key={`o${bow.start}`} className="co" cx={x(bow.start)} cy={start(bow)} r=".52" />
      ))}
    </g>
  );
}
