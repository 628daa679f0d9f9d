import { useEffect, type ReactNode } from 'react';
import type { SectionView } from '../../../../core/agreement/wire/http.ts';
import type { SinceView } from '../../../../core/agreement/wire/overview.ts';
import { deskOf } from '../../../../core/music/seat.ts';
import { words } from '../../../words/words.ts';
import type { Cell } from '../cells.ts';
import { Changes } from './Changes.tsx';
import { byDesk } from './sinceRows.ts';

interface Props {
  cell: Cell;
  section: SectionView | null;
  changes: SinceView['changes'];
  onLaid(): void;
}

/** One small slip of paper for each desk, to be cut apart and laid into its part; shown on paper only. */
export function DeskSlips({ cell: { work, part }, section, changes, onLaid }: Props): ReactNode {
  useEffect(() => {
    void document.fonts.ready.then(() => requestAnimationFrame(onLaid));
  }, [onLaid]);
  const seats = section?.seats ?? [];
  const slips = seats.length ? byDesk(changes, seats.map(({ seat }) => seat)) : [{ desk: 0, changes }];
  const today = words.day(new Date().toISOString());
  return (
    <section className="on-paper desk-slips" aria-hidden="true">
      {slips.map((slip) => (
        <article key={slip.desk}>
          <header>
            <b>{slip.desk ? words.season.desk(slip.desk, seats.flatMap(({ seat, person }) => (person && deskOf(seat) === slip.desk ? [person.name] : []))) : words.season.everyDesk}</b>
            <i>{words.season.slip(work.title, part.name)}</i>
            <span>{today}</span>
          </header>
          <Changes changes={slip.changes} />
        </article>
      ))}
    </section>
  );
}
