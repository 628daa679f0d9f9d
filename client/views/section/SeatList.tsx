import type { ReactNode } from 'react';
import { seatsOf } from '../../../core/agreement/seating.ts';
import type { SectionView } from '../../../core/agreement/wire/http.ts';
import { words } from '../../words/words.ts';
import { desksOf } from './lanes.ts';

/** Who sits where, front to back: all there is to see while nothing is staggered. */
export function SeatList({ section }: { section: SectionView }): ReactNode {
  const name = (seat: string | null) => section.seats.find((place) => place.seat === seat)?.person?.name ?? (seat ? words.section.nobody : '');
  return (
    <table className="seat-list">
      <caption className="offstage">{words.section.seating}</caption>
      <thead>
        <tr>
          <th />
          <th scope="col">{words.section.outside}</th>
          <th scope="col">{words.section.inside}</th>
        </tr>
      </thead>
      <tbody>
        {desksOf(seatsOf(section)).map(({ desk, outside, inside }) => (
          <tr key={desk}>
            <th scope="row">{desk}</th>
            <td>{name(outside)}</td>
            <td>{name(inside)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
