import type { ReactNode } from 'react';
import { Tick } from '../../../ui/Tick.tsx';
import { words } from '../../../words/words.ts';
import { chosenDeadline, deadlineShown, DUE_STAGES, type ProgrammeDraft } from './form.ts';

/** By when every part is to have come so far: worked out, chosen, or no day at all. */
export function Deadlines({ draft, onChange }: { draft: ProgrammeDraft; onChange(next: ProgrammeDraft): void }): ReactNode {
  const { season } = words;
  return (
    <>
      <h4>{season.deadlines}</h4>
      <p className="quiet">{season.deadlinesWhat}</p>
      <ul className="programme-days">
        {DUE_STAGES.map((stage) => {
          const name = words.stages[stage];
          const none = draft.deadlines[stage] === null;
          return (
            <li key={stage}>
              <b>{name}</b>
              <input type="date" aria-label={`${name}, ${season.date}`} value={deadlineShown(draft, stage)} disabled={none} onChange={({ target }) => onChange(chosenDeadline(draft, stage, target.value || undefined))} />
              <Tick checked={none} onTurn={(on) => onChange(chosenDeadline(draft, stage, on ? null : undefined))}>
                {season.noDeadline}
              </Tick>
            </li>
          );
        })}
      </ul>
    </>
  );
}
