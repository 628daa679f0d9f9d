import type { ReactNode } from 'react';
import type { SectionView, Shelf } from '../../../core/agreement/wire/http.ts';
import { seatPeople } from '../../library/shelf.ts';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';
import { resized, seated, type Plan } from './seatingPlan.ts';

/** Who sits where; each choice is kept at once. */
export function Seating({ section, people, act }: { section: SectionView; people: Shelf['people']; act: Act }): ReactNode {
  const plan = section.seats.map(({ seat, person }) => ({ seat, person: person?.id ?? null }));
  const principal = section.principal?.id ?? null;
  const keep = (next: Plan, lead: string | null) => void act(async () => void (await seatPeople(section.id, next, lead !== null && next.some(({ person }) => person === lead) ? lead : null)));
  return (
    <div className="seating">
      <ol>
        {section.seats.map(({ seat, person }) => (
          <li key={seat}>
            <label>
              <span>{words.seat.one(seat)}</span>
              <select value={person?.id ?? ''} onChange={(event) => keep(seated(plan, seat, event.target.value || null), principal)}>
                <option value="">{words.folder.empty2}</option>
                {people.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
            {person ? (
              <label className="tick">
                <input type="radio" name={`principal-${section.id}`} checked={person.id === principal} onChange={() => keep(plan, person.id)} /> {words.folder.principal}
              </label>
            ) : null}
          </li>
        ))}
      </ol>
      <p>
        <button type="button" onClick={() => keep(resized(plan, plan.length + 1), principal)}>
          {words.folder.addSeat}
        </button>
        <button type="button" onClick={() => keep(resized(plan, Math.max(0, plan.length - 1)), principal)} disabled={plan.length === 0}>
          {words.folder.dropSeat}
        </button>
      </p>
    </div>
  );
}
