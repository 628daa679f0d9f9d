import type { FormEvent, ReactNode } from 'react';
import { Tick } from '../../ui/Tick.tsx';
import { words } from '../../words/words.ts';

interface Props {
  name: string;
  what: string;
  onErase(typed: string, comments: boolean): void;
}

/** An erasure, which nobody does by accident: the name is typed for it. */
export function Erase({ name, what, onErase }: Props): ReactNode {
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const said = new FormData(event.currentTarget);
    onErase(String(said.get('name')).trim(), said.get('comments') === 'on');
  };
  return (
    <form className="erase" onSubmit={onSubmit}>
      <p>{what}</p>
      <label>
        <span>{words.mine.type(name)}</span>
        <input name="name" required maxLength={80} autoComplete="off" />
      </label>
      <Tick name="comments">{words.mine.comments}</Tick>
      <button type="submit">{words.mine.do}</button>
    </form>
  );
}
