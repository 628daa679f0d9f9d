import { useState, type FormEvent, type ReactNode } from 'react';
import type { Shelf } from '../../../core/agreement/wire/http.ts';
import { addPerson, linkFor } from '../../library/people.ts';
import { fetchInvitations } from '../../library/shelf.ts';
import { inWords } from '../../library/signIn.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { Fold } from '../../ui/Fold.tsx';
import { Tick } from '../../ui/Tick.tsx';
import { languageNow } from '../../words/language.ts';
import { words } from '../../words/words.ts';
import { Invitations } from './Invitations.tsx';
import type { Act } from './NewProgramme.tsx';
import { PersonActions } from './PersonActions.tsx';
import { SignInLink } from './SignInLink.tsx';
import { whatTheyAre } from './whatTheyAre.ts';

/** Everybody in the ensemble, as what, with a link for each; what may be changed about somebody is folded under their name. */
export function People({ shelf, me, act }: { shelf: Shelf; me: string; act: Act }): ReactNode {
  const { value: invited, again } = useLoaded('invitations', fetchInvitations);
  const [given, setGiven] = useState<{ name: string; link: string } | null>(null);
  const change: Act = (work) =>
    act(async () => {
      try {
        return await work();
      } catch (fault) {
        throw inWords(fault);
      } finally {
        again();
      }
    });
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const said = new FormData(form);
    const name = String(said.get('name') ?? '').trim();
    const address = String(said.get('address') ?? '').trim();
    void change(async () => {
      const standing = { librarian: said.get('librarian') === 'on', deputy: said.get('deputy') === 'on' };
      const { link } = await addPerson(name, standing, address ? { address, language: languageNow() } : undefined);
      setGiven(link === null ? null : { name, link });
      form.reset();
      return link === null ? words.invitations.sent(name, address) : null;
    });
  };
  const give = (id: string, name: string) =>
    void act(async () => {
      setGiven({ name, ...(await linkFor(id)) });
    });
  return (
    <section className="rows people">
      <h2>{words.shelf.people}</h2>
      {given ? <SignInLink key={given.link} {...given} /> : null}
      <ul className="names">
        {shelf.people.map((person) => (
          <li key={person.id}>
            <Fold of={person.id} word={<><b>{person.name}</b> <span className="quiet">{whatTheyAre(person, shelf)}</span></>}>
              <PersonActions person={person} isMe={person.id === me} act={act} />
            </Fold>
            <button type="button" onClick={() => give(person.id, person.name)} aria-label={`${words.shelf.link}: ${person.name}`}>
              {words.shelf.link}
            </button>
          </li>
        ))}
      </ul>
      <form onSubmit={onSubmit}>
        <label>
          <span>{words.shelf.addPerson}</span>
          <input name="name" required maxLength={80} placeholder={words.shelf.personName} />
        </label>
        {invited?.letters ? (
          <label>
            <span>{words.invitations.address}</span>
            <input name="address" type="email" maxLength={200} autoComplete="off" />
          </label>
        ) : null}
        <Tick name="librarian">{words.shelf.isLibrarian}</Tick>
        <Tick name="deputy">{words.people.isDeputy}</Tick>
        <button type="submit">{words.shelf.add2}</button>
      </form>
      <Invitations open={invited?.invitations ?? []} act={change} />
    </section>
  );
}
