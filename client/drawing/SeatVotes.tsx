import type { ReactNode } from 'react';
import { deskOf, isOutside } from '../../core/music/seat.ts';
import type { SectionView } from '../../core/agreement/wire/http.ts';
import type { Vote } from '../../core/agreement/state.ts';

const PITCH = 2.1;

function Seat({ vote, mine, x, y }: { vote: Vote | undefined; mine: boolean; x: number; y: number }): ReactNode {
  const halo = mine ? <circle className="halo" cx={x} cy={y} r="1.02" /> : null;
  if (vote === 'for') {
    return (
      <g className={mine ? 'mine' : ''}>
        <circle className="for" cx={x} cy={y} r=".62" />
        {halo}
      </g>
    );
  }
  if (vote === 'against') {
    return (
      <g className={mine ? 'against mine' : 'against'}>
        <circle cx={x} cy={y} r=".56" />
        <path d={`M${x - 0.4} ${y + 0.4}L${x + 0.4} ${y - 0.4}`} />
        {halo}
      </g>
    );
  }
  return (
    <g className={mine ? 'mine' : ''}>
      <path className="yet" d={`M${x - 0.34} ${y}H${x + 0.34}`} />
      {halo}
    </g>
  );
}

/** Votes where people sit: desks side by side, outside row over inside row; disc for, struck ring against, short stroke not yet. */
export function SeatVotes({ section, votes, me, label }: { section: SectionView; votes: Record<string, Vote>; me: string; label: string }): ReactNode {
  const desks = Math.max(1, ...section.seats.map(({ seat }) => deskOf(seat)));
  const width = desks * PITCH + 0.6;
  return (
    <svg className="seats" role="img" aria-label={label} viewBox={`-.3 -.4 ${width} 4.4`} style={{ width: `calc(${width} * var(--seat))`, height: 'calc(4.4 * var(--seat))' }}>
      {Array.from({ length: desks }, (_, desk) => (
        <path key={desk} className="deskline" d={`M${0.9 + desk * PITCH - 0.72} 1.8h1.44`} />
      ))}
      {section.seats.map(({ seat, person }) => (
        <Seat key={seat} vote={person ? votes[person.id] : undefined} mine={person?.id === me} x={0.9 + (deskOf(seat) - 1) * PITCH} y={isOutside(seat) ? 0.9 : 2.7} />
      ))}
    </svg>
  );
}
