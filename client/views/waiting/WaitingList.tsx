import type { ReactNode } from 'react';
import type { WaitingView } from '../../../core/agreement/wire/http.ts';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { words } from '../../words/words.ts';
import { waitSentence } from './waitSentence.ts';

/** What waits for me, part by part; each line leads to its measure on the stand. */
export function WaitingList({ parts }: Pick<WaitingView, 'parts'>): ReactNode {
  return (
    <section className="rows waits" aria-label={words.waits.title}>
      <h2>{words.waits.title}</h2>
      {parts.length ? null : <p>{words.waits.nothingAnywhere}</p>}
      {parts.map(({ id, name, work, waits, numbers }) => (
        <div key={id}>
          <h4>{words.waits.inPart(work.title, name)}</h4>
          <ul>
            {waits.map((one) => (
              <li key={`${one.kind} ${one.seq} ${one.proposal}`}>
                <PlaceLink to={{ at: 'stand', part: id, measure: one.measure, open: one.proposal ?? '' }}>{waitSentence(one, (ordinal) => numbers[ordinal] ?? String(ordinal))}</PlaceLink>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}
