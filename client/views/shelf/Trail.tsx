import { useState, type ReactNode } from 'react';
import { TRAIL_KINDS, type TrailRow } from '../../../core/agreement/wire/trail.ts';
import { troubleText } from '../../library/http.ts';
import { fetchTrail, type SomebodyHere } from '../../library/people.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { Choice } from '../../ui/Choice.tsx';
import { Fold } from '../../ui/Fold.tsx';
import { languageNow } from '../../words/language.ts';
import { words } from '../../words/words.ts';

const sentence = ({ kind, by, about, facts }: TrailRow): string => words.trail.told[kind]({ by: by?.name ?? words.trail.library, about: about === null || about.id === by?.id ? null : about.name, facts });
const moment = (at: string): string => new Date(at).toLocaleString(languageNow(), { day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit' });

/** Rows of one filter, page after page: what was shown stays, what lies further back is added. */
function Rows({ person, kind }: { person: string; kind: string }): ReactNode {
  const [before, setBefore] = useState<string | null>(null);
  const [shown, setShown] = useState<readonly TrailRow[]>([]);
  const { value, fault } = useLoaded(`trail ${person} ${kind} ${before ?? ''}`, () => fetchTrail(person, kind, before));
  const rows = [...shown, ...(value?.rows ?? [])];
  return (
    <>
      {fault ? <p role="status">{troubleText(fault)}</p> : null}
      {value && rows.length === 0 ? <p className="quiet">{words.trail.none}</p> : null}
      <ol className="told">
        {rows.map((row) => (
          <li key={row.id}>
            <time dateTime={row.at} className="quiet">
              {moment(row.at)}
            </time>{' '}
            {sentence(row)}
          </li>
        ))}
      </ol>
      {value?.before ? (
        <button
          type="button"
          onClick={() => {
            setShown(rows);
            setBefore(value.before);
          }}
        >
          {words.trail.older}
        </button>
      ) : null}
    </>
  );
}

function Filtered({ people }: { people: readonly SomebodyHere[] }): ReactNode {
  const [person, setPerson] = useState('');
  const [kind, setKind] = useState('');
  return (
    <>
      {people.length ? (
        <p className="chosen-line">
          <Choice label={words.trail.person} value={person} onChoose={setPerson} options={[{ value: '', word: words.trail.everybody }, ...people.map(({ id, name }) => ({ value: id, word: name }))]} />
        </p>
      ) : null}
      <p className="chosen-line">
        <Choice label={words.trail.kind} value={kind} onChoose={setKind} options={[{ value: '', word: words.trail.everything }, ...TRAIL_KINDS.map((one) => ({ value: one, word: words.trail.kinds[one] }))]} />
      </p>
      <Rows key={`${person} ${kind}`} person={person} kind={kind} />
    </>
  );
}

/** What was done in the ensemble, the last first: for the librarian, and for a principal as far as their section goes. */
export function Trail({ people }: { people: readonly SomebodyHere[] }): ReactNode {
  return (
    <section className="rows trail">
      <Fold word={words.trail.title} of="trail">
        <Filtered people={people} />
      </Fold>
    </section>
  );
}
