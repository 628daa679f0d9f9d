import { Autocomplete } from '@base-ui/react/autocomplete';
import { useRef, useState, type FormEvent, type KeyboardEvent, type ReactNode } from 'react';
import type { Mention } from '../../../core/agreement/state.ts';
import { words } from '../../words/words.ts';
import { halfSaid, keepHalfSaid } from './halfSaid.ts';
import { meantBy, mentionsIn, namedSoFar } from './mentions.ts';
import { useLineFocus } from './useLineFocus.ts';

interface Who {
  id: string;
  name: string;
  /** Where they sit. */
  seat: string;
}

interface Props {
  label: string;
  /** Whose words these are and what about: what was begun and left is there again. */
  about: string;
  people: readonly Who[];
  max: number;
  onWrite(text: string, mentions: Mention[]): void;
  onLeave(): void;
}

/** A line of talk in which a name after @ is completed from the section's people. Enter takes the name while one is offered, else it says it. */
export function SayLine({ label, about, people, max, onWrite, onLeave }: Props): ReactNode {
  const [text, setText] = useState(() => halfSaid(about));
  const [caret, setCaret] = useState(0);
  const field = useRef<HTMLInputElement>(null);
  useLineFocus(field);
  const begun = namedSoFar(text, caret);
  const offered = begun ? meantBy(begun.said, people) : [];
  const take = ({ name }: Who) => {
    if (!begun) return;
    const before = `${text.slice(0, begun.from)}@${name} `;
    const whole = before + text.slice(caret).replace(/^ /, '');
    setText(whole);
    keepHalfSaid(about, whole);
    setCaret(before.length);
    requestAnimationFrame(() => field.current?.setSelectionRange(before.length, before.length));
    field.current?.focus();
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const said = text.trim();
    if (said) {
      keepHalfSaid(about, '');
      onWrite(said, mentionsIn(said, people));
    } else field.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    event.stopPropagation();
    if (event.key === 'Escape') onLeave();
  };
  const type = (value: string) => {
    setText(value);
    keepHalfSaid(about, value);
    follow();
  };
  const follow = () => setCaret(field.current?.selectionStart ?? 0);
  return (
    <form className="line" onSubmit={onSubmit} onKeyDown={onKeyDown} autoComplete="off">
      <Autocomplete.Root items={offered} mode="none" inline open={offered.length > 0} autoHighlight="always" value={text} onValueChange={(value, { reason }) => reason !== 'item-press' && type(value)} itemToStringValue={({ name }: Who) => name}>
        <label>
          <span>{label}</span>
          <Autocomplete.Input ref={field} maxLength={max} placeholder={words.named.hint} enterKeyHint="done" onSelect={follow} onKeyUp={follow} />
        </label>
        <Autocomplete.List className="said-list" aria-label={words.named.people}>
          {offered.map((who, i) => (
            <Autocomplete.Item key={who.id} index={i} value={who} className="said" onClick={() => take(who)}>
              <span>{who.name}</span> <small>{who.seat}</small>
            </Autocomplete.Item>
          ))}
        </Autocomplete.List>
      </Autocomplete.Root>
      <button type="submit">{words.line.speak}</button>
      <button type="button" className="quiet" onClick={onLeave}>
        {words.line.leave}
      </button>
    </form>
  );
}
