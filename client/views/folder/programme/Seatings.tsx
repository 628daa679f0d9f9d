import type { ReactNode } from 'react';
import { changedSeating, seatedIn } from '../../../../core/agreement/seating.ts';
import type { Me, SectionView, Shelf, ProgrammeView } from '../../../../core/agreement/wire/http.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';
import type { Cells } from '../cells.ts';
import { OwnSeating } from './OwnSeating.tsx';

interface Props {
  me: Me;
  shelf: Shelf;
  programme: ProgrammeView;
  cells: Cells;
  act: Act;
}

const names = (people: readonly { name: string }[]) => people.map(({ name }) => name);

/** Who sits where in this programme, by section: deputies, who is away; the librarian changes it here. */
export function Seatings({ me, shelf, programme, cells, act }: Props): ReactNode {
  const playing = shelf.sections.filter(({ id }) => cells.columns.some((column) => column?.id === id));
  if (playing.length === 0) return null;
  const { season } = words;
  const line = (usual: SectionView, now: SectionView) => {
    const { deputies, away } = changedSeating(usual, now);
    const own = programme.seatings.some(({ section }) => section === usual.id);
    const size = words.folder.players(now.seats.filter(({ person }) => person).length, new Set(now.seats.map(({ seat }) => seat.slice(0, -1))).size);
    return { deputies, away, own, size, how: own ? season.otherwise(deputies.length, away.length) : season.asUsual };
  };
  return (
    <section className="rows seatings">
      <h2>{season.seating}</h2>
      {playing.map((usual) => {
        const now = seatedIn(usual, programme.seatings);
        const { deputies, away, own, size, how } = line(usual, now);
        return (
          <Fold key={usual.id} of={`seats ${usual.id}`} word={<><b>{usual.name}</b> <span className="quiet">{size}; {how}</span></>}>
            {deputies.length ? <p>{season.deputies(names(deputies))}</p> : null}
            {away.length ? <p>{season.away(names(away))}</p> : null}
            {me.librarian ? (
              <OwnSeating programme={programme.id} section={now} own={own} people={shelf.people} act={act} />
            ) : (
              <ol className="seats-read">
                {now.seats.map(({ seat, person }) => (
                  <li key={seat}>
                    <span>{words.seat.one(seat)}</span> {person?.name ?? words.folder.empty2}
                    {person && person.id === now.principal?.id ? `, ${words.folder.principal}` : ''}
                  </li>
                ))}
              </ol>
            )}
          </Fold>
        );
      })}
    </section>
  );
}
