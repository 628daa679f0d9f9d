import type { FormEvent, ReactNode } from 'react';
import { keepMarks } from '../../../library/archive.ts';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';

/** Puts the marks of a work by, as they stand. */
export function PutBy({ work, act }: { work: string; act: Act }): ReactNode {
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const said = new FormData(event.currentTarget);
    const text = (name: string) => String(said.get(name) ?? '').trim();
    void act(async () => {
      const under = { ensemble: text('ensemble'), conductor: text('conductor'), season: text('season') };
      await keepMarks(work, under);
      return words.reuse.kept(words.archive.under(under.season, under.conductor, under.ensemble));
    });
  };
  return (
    <form onSubmit={onSubmit}>
      {(['ensemble', 'conductor', 'season'] as const).map((name) => (
        <label key={name}>
          <span>{words.reuse[name]}</span>
          <input name={name} required maxLength={name === 'season' ? 40 : 120} />
        </label>
      ))}
      <button type="submit">{words.reuse.put}</button>
    </form>
  );
}
