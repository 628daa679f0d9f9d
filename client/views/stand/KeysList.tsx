import type { ReactNode } from 'react';
import { words } from '../../words/words.ts';

/** The list of keys, in the ledge, above its row. */
export function KeysList({ onClose }: { onClose(): void }): ReactNode {
  return (
    <section className="keys-list" aria-label={words.keys.title}>
      <h2>{words.keys.title}</h2>
      <dl>
        {words.keys.rows.map(([key, what]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{what}</dd>
          </div>
        ))}
      </dl>
      <button type="button" className="quiet" onClick={onClose}>
        {words.keys.close}
      </button>
    </section>
  );
}
