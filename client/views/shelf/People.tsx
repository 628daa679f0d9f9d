import { useState, type FormEvent, type ReactNode } from 'react';
import type { Shelf } from '../../../core/agreement/wire/http.ts';
import { addPerson, linkFor } from '../../library/shelf.ts';
import { Tick } from '../../ui/Tick.tsx';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';
import { SignInLink } from './SignInLink.tsx';

/** Everybody who may sign in, with a link for each. */
export function People({ people, act }: { people: Shelf['people']; act: Act }): ReactNode {
  const [given, setGiven] = useState<{ name: string; link: string } | null>(null);
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const said = new FormData(form);
    const name = String(said.get('name') ?? '').trim();
    void act(async () => {
      const { link } = await addPerson(name, said.get('librarian') === 'on');
      setGiven({ name, link });
      form.reset();
    });
  };
  const give = (id: string, name: string) =>
    void act(async () => {
      setGiven({ name, ...(await linkFor(id)) });
    });
  return (
    <section className="rows">
      <h2>{words.shelf.people}</h2>
      {given ? <SignInLink key={given.link} {...given} /> : null}
      <ul className="names">
        {people.map(({ id, name, librarian }) => (
          <li key={id}>
            <b>{name}</b> {librarian ? <span>{words.folder.library}</span> : null}
            <button type="button" onClick={() => give(id, name)} aria-label={`${words.shelf.link}: ${name}`}>
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
        <button type="submit">{words.shelf.add2}</button>
      </form>
    </section>
  );
}
