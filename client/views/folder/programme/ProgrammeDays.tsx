import type { ReactNode } from 'react';
import type { ProgrammeView } from '../../../../core/agreement/wire/http.ts';
import { words } from '../../../words/words.ts';

/** Season, conductor, and every rehearsal and concert with its time and place; nothing where the two days on the time line are all that is known. */
export function ProgrammeDays({ programme: { season, conductor, days } }: { programme: ProgrammeView }): ReactNode {
  const more = days.length > 2 || days.some(({ time, words: said }) => time !== null || said !== '');
  const about = [season, conductor].filter(Boolean);
  if (!more && about.length === 0) return null;
  return (
    <div className="programme-about">
      {about.length ? <p>{about.join(' · ')}</p> : null}
      {more ? (
        <ul aria-label={words.season.days}>
          {days.map(({ kind, date, time, words: said }, i) => (
            <li key={i}>{[`${words.season.kinds[kind]} ${words.day(date)}`, time, said].filter(Boolean).join(', ')}</li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}
