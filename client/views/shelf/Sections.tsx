import type { FormEvent, ReactNode } from 'react';
import type { SectionView, Shelf } from '../../../core/agreement/wire/http.ts';
import { addSection, seatPeople } from '../../library/shelf.ts';
import { Fold } from '../../ui/Fold.tsx';
import { words } from '../../words/words.ts';
import { Choice } from '../../ui/Choice.tsx';
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
  const instruments = Object.entries(words.shelf.instruments).map(([value, word]) => ({ value, word }));
  return (
    <section className="rows sections">
      <h2>{words.shelf.sections}</h2>
      {sections.map((section) => (
        <Fold key={section.id} of={section.id} word={<><b>{section.name}</b> <span className="quiet">{words.folder.players(section.seats.filter(({ person }) => person).length, Math.ceil(section.seats.length / 2))}</span></>}>
          <Seating section={section} people={people} onKeep={(plan, principal) => void act(async () => void (await seatPeople(section.id, plan, principal)))} />
        </Fold>
      ))}
      <form onSubmit={onSubmit}>
        <label>
          <span>{words.shelf.addSection}</span>
          <input name="name" required maxLength={60} placeholder={words.shelf.sectionName} />
        </label>
        <p className="chosen-line">
          <Choice label={words.shelf.instrument} name="instrument" options={instruments} first={instruments[0]!.value} />
        </p>
        <button type="submit">{words.shelf.add2}</button>
      </form>
    </section>
  );
}
