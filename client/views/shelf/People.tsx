import { useState, type FormEvent, type ReactNode } from 'react';
import type { Shelf } from '../../../core/agreement/wire/http.ts';
import { addPerson, linkFor } from '../../library/people.ts';
import { Fold } from '../../ui/Fold.tsx';
import { Tick } from '../../ui/Tick.tsx';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';
import { PersonActions } from './PersonActions.tsx';
import { SignInLink } from './SignInLink.tsx';
import { whatTheyAre } from './whatTheyAre.ts';

/** Everybody in the ensemble, as what, with a link for each; what may be changed about somebody is folded under their name. */
export function People({ shelf, me, act }: { shelf: Shelf; me: string; act: Act }): ReactNode {
  const [given, setGiven] = useState<{ name: string; link: string } | null>(null);
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const said = new FormData(form);
    const name = String(said.get('name') ?? '').trim();
    void act(async () => {
      const { link } = await addPerson(name, { librarian: said.get('librarian') === 'on', deputy: said.get('deputy') === 'on' });
      setGiven({ name, link });
      form.reset();
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
        <Tick name="librarian">{words.shelf.isLibrarian}</Tick>
        <Tick name="deputy">{words.people.isDeputy}</Tick>
        <button type="submit">{words.shelf.add2}</button>
      </form>
    </section>
  );
}
