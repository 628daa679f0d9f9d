import type { ReactNode } from 'react';
import type { SeatId } from '../../../../core/music/seat.ts';
import { Choice } from '../../../ui/Choice.tsx';
import { Tick } from '../../../ui/Tick.tsx';
import { words } from '../../../words/words.ts';
import { desksOf, type Copies } from './copies.ts';

interface Props {
  name: string;
  seats: readonly SeatId[];
  /** Null: none of this part. */
  copies: Copies | null;
  onTurn(copies: Copies | null): void;
}

/** One part: whether it is wanted, and for whom. */
export function CopiesLine({ name, seats, copies, onTurn }: Props): ReactNode {
  const desks = desksOf(seats);
  const many = seats.length
    ? [
        { value: 'desks', word: words.prints.desks(desks.length) },
        { value: 'seats', word: words.prints.seats(seats.length) },
        ...desks.map((desk) => ({ value: desk, word: words.prints.desk(desk) })),
        ...seats.map((seat) => ({ value: seat, word: words.prints.seat(words.seat.one(seat)) })),
      ]
    : [];
  return (
    <div className="chosen-line copies-line">
      <Tick checked={copies !== null} onTurn={(on) => onTurn(on ? 'section' : null)}>{name}</Tick>
      {copies === null ? null : <Choice label={words.prints.part(name)} options={[{ value: 'section', word: words.prints.section }, ...many]} value={copies} onChoose={(chosen) => onTurn(chosen)} />}
    </div>
  );
}
