import type { ReactNode } from 'react';
import { deskOf, isFor, isOutside, type Seats } from '../../../core/music/seat.ts';
import { words } from '../../words/words.ts';
import { toggleSeat } from './seats.ts';

/** For whom a slip is: the section's seats as they sit, outside row over inside row. */
export function SeatChooser({ chosen, all, onChoose }: { chosen: Seats; all: readonly string[]; onChoose(seats: Seats): void }): ReactNode {
  return (
    <fieldset className="seat-chooser">
      <legend className="offstage">{words.seat.choose}</legend>
      <button type="button" aria-pressed={chosen === 'all'} className="everyone" onClick={() => onChoose('all')}>
        {words.seat.all}
      </button>
      <span className="chairs">
        {all.map((seat) => (
          <button
            key={seat} type="button" className={isFor(chosen, seat) ? 'seat on' : 'seat'} aria-pressed={isFor(chosen, seat)} aria-label={words.seat.one(seat)} title={words.seat.one(seat)}
            style={{ gridColumn: deskOf(seat), gridRow: isOutside(seat) ? 1 : 2 }} onClick={() => onChoose(toggleSeat(chosen, seat, all))}
          />
        ))}
      </span>
    </fieldset>
  );
}
