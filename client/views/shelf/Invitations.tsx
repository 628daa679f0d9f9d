import type { ReactNode } from 'react';
import type { InvitationView } from '../../../core/agreement/wire/signIn.ts';
import { withdraw } from '../../library/shelf.ts';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';

/** Who was invited and has not come yet. */
export function Invitations({ open, act }: { open: readonly InvitationView[]; act: Act }): ReactNode {
  if (!open.length) return null;
  return (
    <>
      <h3>{words.invitations.title}</h3>
      <ul className="names invited">
        {open.map(({ id, person, address, until }) => (
          <li key={id}>
            <b>{person.name}</b>{' '}
            <span>
              {words.invitations.until(words.day(until))}
              {address === null ? null : `, ${words.invitations.byLetter(address)}`}
            </span>
            <button type="button" aria-label={`${words.invitations.withdraw}: ${person.name}`} onClick={() => void act(async () => withdraw(id).then(() => words.invitations.withdrawn(person.name)))}>
              {words.invitations.withdraw}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
