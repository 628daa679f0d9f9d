import { useState, type FormEvent, type ReactNode } from 'react';
import type { ProgrammeView } from '../../../../core/agreement/wire/http.ts';
import { writeProgramme } from '../../../library/shelf.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';
import { DayRow } from './DayRow.tsx';
import { Deadlines } from './Deadlines.tsx';
import { bodyOf, changedDay, draftOf, withDay, withoutDay } from './form.ts';

const NAMES = ['title', 'season', 'conductor'] as const;
const KINDS = ['rehearsal', 'concert'] as const;

/** What the librarian may change about a programme: what it is called, its days, its deadlines; folded until it is asked for. */
export function ProgrammeForm({ programme, act }: { programme: ProgrammeView; act: Act }): ReactNode {
  return (
    <section className="rows">
      <Fold of="programme" word={<b>{words.season.edit}</b>}>
        <DraftForm key={JSON.stringify(draftOf(programme))} programme={programme} act={act} />
      </Fold>
    </section>
  );
}

/** Everything at once is kept, or nothing. */
function DraftForm({ programme, act }: { programme: ProgrammeView; act: Act }): ReactNode {
  const [draft, setDraft] = useState(() => draftOf(programme));
  const { season } = words;
  const labels = { title: words.shelf.title, season: season.season, conductor: season.conductor };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    void act(async () => {
      await writeProgramme(programme.id, bodyOf(draft));
      return season.kept(draft.title.trim());
    });
  };
  const rank = (at: number) => draft.days.slice(0, at + 1).filter(({ kind }) => kind === draft.days[at]!.kind).length;
  return (
    <form className="programme" onSubmit={onSubmit}>
      {NAMES.map((name) => (
        <label key={name}>
          <span>{labels[name]}</span>
          <input value={draft[name]} required={name === 'title'} maxLength={name === 'title' ? 120 : 60} onChange={({ target }) => setDraft({ ...draft, [name]: target.value })} />
        </label>
      ))}
      <h4>{season.days}</h4>
      <ol className="programme-days">
        {draft.days.map((day, at) => (
          <DayRow key={at} day={day} n={rank(at)} onChange={(change) => setDraft(changedDay(draft, at, change))} onLeaveOut={() => setDraft(withoutDay(draft, at))} />
        ))}
      </ol>
      <p className="more">
        {KINDS.map((kind) => (
          <button key={kind} type="button" onClick={() => setDraft(withDay(draft, kind))}>
            {season.oneMore[kind]}
          </button>
        ))}
      </p>
      <Deadlines draft={draft} onChange={setDraft} />
      <button type="submit">{season.keep}</button>
    </form>
  );
}
