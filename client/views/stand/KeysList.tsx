import { useEffect, useRef, type ReactNode } from 'react';
import { sheetOf } from '../../tools/sheet/rows.ts';
import type { Command } from '../../tools/keys.ts';
import { words } from '../../words/words.ts';

/** Every key, in the ledge, above its row. The focus goes there, so that it is read and scrolled from the keyboard. */
export function KeysList({ onClose, onCommand }: { onClose(): void; onCommand(command: Command): void }): ReactNode {
  const sheet = useRef<HTMLElement>(null);
  useEffect(() => sheet.current?.focus(), []);
  return (
    <section className="keys-list" aria-label={words.keys.title} tabIndex={-1} ref={sheet}>
      <h2>{words.keys.title}</h2>
      <button type="button" className="quiet" onClick={onClose}>
        {words.keys.close}
      </button>
      <button type="button" className="in-words" onClick={() => (onClose(), onCommand({ do: 'command' }))}>
        {words.keys.says.command} <kbd aria-hidden="true">:</kbd>
      </button>
      <div className="key-groups">
        {sheetOf().map(({ title, rows }) => (
          <section key={title}>
            <h3>{title}</h3>
            <dl>
              {rows.map(({ name, caps, says }) => (
                <div key={name} data-key-row={name}>
                  <dt>{caps}</dt>
                  <dd>{says}</dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
      </div>
    </section>
  );
}
