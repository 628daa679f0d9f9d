import { Autocomplete } from '@base-ui/react/autocomplete';
import { useRef, useState, type KeyboardEvent, type ReactNode } from 'react';
import { words } from '../../words/words.ts';
import type { Command } from '../keys.ts';
import { meant, type Said } from '../sheet/said.ts';
import { useLineFocus } from './useLineFocus.ts';

/** A line in which any command can be said; what may be meant stands above it, likeliest first, each with its key. */
export function CommandLine({ onCommand, onLeave }: { onCommand(command: Command): void; onLeave(): void }): ReactNode {
  const [said, setSaid] = useState('');
  const field = useRef<HTMLInputElement>(null);
  useLineFocus(field);
  const found = meant(said);
  const onKeyDown = (event: KeyboardEvent) => {
    event.stopPropagation();
    if (event.key === 'Escape') onLeave();
  };
  return (
    <div className="line" onKeyDown={onKeyDown}>
      <Autocomplete.Root items={found} mode="none" inline open autoHighlight="always" value={said} onValueChange={(text, { reason }) => reason !== 'item-press' && setSaid(text)} itemToStringValue={({ says }: Said) => says}>
        <label>
          <span>{words.keys.ask}</span>
          <Autocomplete.Input ref={field} placeholder={words.keys.hint} maxLength={80} enterKeyHint="go" autoCapitalize="none" spellCheck={false} />
        </label>
        <Autocomplete.List className="said-list" aria-label={words.keys.ask}>
          {found.map((one, i) => (
            <Autocomplete.Item key={`${one.name} ${one.says}`} index={i} value={one} className="said" onClick={() => onCommand(one.command)}>
              <span>{one.says}</span> <kbd aria-hidden="true">{one.cap}</kbd>
            </Autocomplete.Item>
          ))}
        </Autocomplete.List>
        <Autocomplete.Empty className={found.length ? '' : 'said-list none'}>{said.trim() ? words.keys.noneSuch(said.trim()) : null}</Autocomplete.Empty>
      </Autocomplete.Root>
      <button type="button" className="quiet" onClick={onLeave}>
        {words.line.leave}
      </button>
    </div>
  );
}
