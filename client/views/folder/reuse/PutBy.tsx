import type { FormEvent, ReactNode } from 'react';
import type { ProgrammeView } from '../../../../core/agreement/wire/http.ts';
import type { KeptSetView } from '../../../../core/archive/keptSet.ts';
import { fetchSets, keepMarks } from '../../../library/archive.ts';
import { useLoaded } from '../../../library/useLoaded.ts';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';

/** Puts the marks of a work by, as they stand: under the programme's own season and conductor and the ensemble of the last set, unless somebody says otherwise. */
export function PutBy({ work, programme, act }: { work: string; programme: Pick<ProgrammeView, 'season' | 'conductor'>; act: Act }): ReactNode {
  const { value: sets, fault } = useLoaded('archive', fetchSets);
  if (!sets && !fault) return null;
  const last = sets?.reduce<KeptSetView | null>((latest, set) => (latest && latest.keptAt > set.keptAt ? latest : set), null);
  const first = { ensemble: last?.ensemble ?? '', conductor: programme.conductor, season: programme.season };
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
          <input name={name} required maxLength={name === 'season' ? 40 : 120} defaultValue={first[name]} />
        </label>
      ))}
      <button type="submit">{words.reuse.put}</button>
    </form>
  );
}
