import { Radio } from '@base-ui/react/radio';
import { RadioGroup } from '@base-ui/react/radio-group';
import type { ReactNode } from 'react';
import type { SectionView, Shelf } from '../../../core/agreement/wire/http.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../../ui/Choice.tsx';
import { planOf, resized, seated, type Plan } from './seatingPlan.ts';

interface Props {
  section: Pick<SectionView, 'seats' | 'principal'>;
  people: Shelf['people'];
  onKeep(plan: Plan, principal: string | null): void;
}

/** Who sits where; each choice is kept at once. */
export function Seating({ section, people, onKeep }: Props): ReactNode {
  const plan = planOf(section);
  const principal = section.principal?.id ?? null;
  const chairs = [{ value: '', word: words.folder.empty2 }, ...people.map(({ id, name }) => ({ value: id, word: name }))];
  const keep = (next: Plan, lead: string | null) => onKeep(next, lead !== null && next.some(({ person }) => person === lead) ? lead : null);
  return (
    <div className="seating">
      <RadioGroup aria-label={words.folder.principal} value={principal} onValueChange={(person) => keep(plan, person)}>
        <ol>
          {section.seats.map(({ seat, person }) => (
            <li key={seat}>
              <Choice label={words.seat.one(seat)} options={chairs} value={person?.id ?? ''} onChoose={(chosen) => keep(seated(plan, seat, chosen || null), principal)} />
              {person ? (
                <label className="tick">
                  <Radio.Root value={person.id} className="one-mark">
                    <Radio.Indicator className="one-dot" />
                  </Radio.Root>{' '}
                  {words.folder.principal}
                </label>
              ) : null}
            </li>
          ))}
        </ol>
      </RadioGroup>
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
