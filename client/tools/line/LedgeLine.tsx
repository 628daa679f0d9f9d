import { useRef, useState, type FormEvent, type KeyboardEvent, type ReactNode } from 'react';
import type { Seats } from '../../../core/music/seat.ts';
import { words } from '../../words/words.ts';
import { halfSaid, keepHalfSaid } from './halfSaid.ts';
import { SeatChooser } from './SeatChooser.tsx';
import { useLineFocus } from './useLineFocus.ts';

interface Props {
  label: string;
  button: string;
  text?: string;
  /** Whose words these are and what for: what was begun and left is there again. */
  about?: string;
  max: number;
  numeric?: boolean;
  /** For whom, where that is asked. */
  seats?: { chosen: Seats; all: readonly string[] };
  onWrite(text: string, seats: Seats): void;
  onLeave(): void;
}

/** One line of writing on the ledge, in place of the sentence. Enter writes, Esc leaves. */
export function LedgeLine({ label, button, text = '', about, max, numeric = false, seats, onWrite, onLeave }: Props): ReactNode {
  const field = useRef<HTMLInputElement>(null);
  const [chosen, setChosen] = useState<Seats>(seats?.chosen ?? 'all');
  useLineFocus(field);
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const said = field.current?.value.trim() ?? '';
    if (said) {
      if (about) keepHalfSaid(about, '');
      onWrite(said, chosen);
    } else field.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    event.stopPropagation();
    if (event.key === 'Escape') onLeave();
  };
  return (
    <form className="line" onSubmit={onSubmit} onKeyDown={onKeyDown} autoComplete="off">
      <label>
        <span>{label}</span>
        <input ref={field} defaultValue={text || (about ? halfSaid(about) : '')} onChange={about ? (event) => keepHalfSaid(about, event.target.value) : undefined} maxLength={max} inputMode={numeric ? 'text' : undefined} enterKeyHint="done" />
      </label>
      {seats ? <SeatChooser chosen={chosen} all={seats.all} onChoose={setChosen} /> : null}
      <button type="submit">{button}</button>
      <button type="button" className="quiet" onClick={onLeave}>
        {words.line.leave}
      </button>
    </form>
  );
}
