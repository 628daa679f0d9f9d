import type { FormEvent, ReactNode } from 'react';
import type { SectionView, Shelf } from '../../../core/agreement/wire/http.ts';
import { addSection } from '../../library/shelf.ts';
import { words } from '../../words/words.ts';
import { Seating } from './Seating.tsx';
import type { Act } from './NewProgramme.tsx';

/** The sections and who sits where in them. */
export function Sections({ sections, people, act }: { sections: readonly SectionView[]; people: Shelf['people']; act: Act }): ReactNode {
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const said = new FormData(form);
    void act(async () => {
      await addSection(String(said.get('name')).trim(), String(said.get('instrument')));
      form.reset();
    });
  };
  return (
    <section className="rows">
      <h2>{words.shelf.sections}</h2>
      {sections.map((section) => (
        <details key={section.id} data-section={section.id}>
          <summary>
            <b>{section.name}</b> <span>{words.folder.players(section.seats.filter(({ person }) => person).length, Math.ceil(section.seats.length / 2))}</span>
          </summary>
          <Seating section={section} people={people} act={act} />
        </details>
      ))}
      <form onSubmit={onSubmit}>
        <label>
          <span>{words.shelf.addSection}</span>
          <input name="name" required maxLength={60} placeholder={words.shelf.sectionName} />
        </label>
        <label>
          <span>{words.shelf.instrument}</span>
          <select name="instrument">
            {Object.entries(words.shelf.instruments).map(([value, name]) => (
              <option key={value} value={value}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <button type="submit">{words.shelf.add2}</button>
      </form>
    </section>
  );
}
