import type { FormEvent, ReactNode } from 'react';
import { addProgramme } from '../../library/shelf.ts';
import { words } from '../../words/words.ts';

export type Act = (work: () => Promise<string | null | void>) => Promise<void>;

const DAYS = [['first', 'rehearsal'], ['concert', 'concert']] as const;

/** A new programme: a title, and the days it is for, where known. */
export function NewProgramme({ act }: { act: Act }): ReactNode {
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const said = new FormData(form);
    const text = (name: string) => String(said.get(name) ?? '').trim();
    void act(async () => {
      const days = DAYS.flatMap(([name, kind]) => (text(name) ? [{ kind, date: text(name) }] : []));
      await addProgramme({ title: text('title'), season: text('season'), conductor: text('conductor'), days });
      form.reset();
    });
  };
  return (
    <form className="rows" onSubmit={onSubmit}>
      <h2>{words.shelf.add}</h2>
      <label>
        <span>{words.shelf.title}</span>
        <input name="title" required maxLength={120} />
      </label>
      <label>
        <span>{words.season.season}</span>
        <input name="season" maxLength={60} />
      </label>
      <label>
        <span>{words.season.conductor}</span>
        <input name="conductor" maxLength={80} />
      </label>
      <label>
        <span>{words.shelf.first}</span>
        <input name="first" type="date" />
      </label>
      <label>
        <span>{words.shelf.concert}</span>
        <input name="concert" type="date" />
      </label>
      <button type="submit">{words.shelf.put}</button>
    </form>
  );
}
