import type { FormEvent, ReactNode } from 'react';
import type { Me } from '../../../core/agreement/wire/http.ts';
import { forgetKept } from '../../library/kept/library.ts';
import { lookInto, nameEnsemble } from '../../library/people.ts';
import { Choice } from '../../ui/Choice.tsx';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';

/** Another of my ensembles laid open; for whoever belongs to several. */
export function Ensembles({ me, act }: { me: Me; act: Act }): ReactNode {
  if (me.ensembles.length < 2) return null;
  const look = (id: string) =>
    void act(async () => {
      await lookInto(id);
      // What this browser keeps is the other ensemble's.
      await forgetKept();
      return words.people.looked(me.ensembles.find((one) => one.id === id)!.name);
    });
  return (
    <div className="rows ensembles">
      <p className="chosen-line">
        <Choice label={words.people.ensemble} options={me.ensembles.map(({ id, name }) => ({ value: id, word: name }))} value={me.ensemble.id} onChoose={look} />
      </p>
    </div>
  );
}

/** The ensemble's name, for its librarian to change. */
export function EnsembleName({ ensemble: { name }, act }: { ensemble: Me['ensemble']; act: Act }): ReactNode {
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const wanted = String(new FormData(event.currentTarget).get('ensemble')).trim();
    void act(async () => {
      await nameEnsemble(wanted);
      return words.people.renamed(wanted);
    });
  };
  return (
    <form className="rows" onSubmit={onSubmit} key={name}>
      <h2>{words.people.ensemble}</h2>
      <label>
        <span>{words.shelf.sectionName}</span>
        <input name="ensemble" required maxLength={80} defaultValue={name} />
      </label>
      <button type="submit">{words.people.rename}</button>
    </form>
  );
}
