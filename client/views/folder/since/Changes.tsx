import type { ReactNode } from 'react';
import type { SinceView } from '../../../../core/agreement/wire/overview.ts';
import { words } from '../../../words/words.ts';
import { changeSentence } from '../../changeSentence.ts';
import { byMeasure } from './sinceRows.ts';

/** Changes measure by measure, each in words. */
export function Changes({ changes }: { changes: SinceView['changes'] }): ReactNode {
  return (
    <ol className="since-changes">
      {byMeasure(changes).map((row) => (
        <li key={row.changes[0]!.note}>
          <b>{words.measure(row.number)}</b>
          {row.changes.map((change) => (
            <span key={`${change.note} ${String(change.seats)}`}>{changeSentence(change)}</span>
          ))}
        </li>
      ))}
    </ol>
  );
}
