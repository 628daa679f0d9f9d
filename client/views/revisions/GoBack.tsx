import type { FormEvent, ReactNode } from 'react';
import { operate } from '../../library/shelf.ts';
import { words } from '../../words/words.ts';
import type { Act } from '../shelf/NewProgramme.tsx';

/** Back to the marks of an earlier state, with a reason: what stood then is inked in again. */
export function GoBack({ part, seq, name, act }: { part: string; seq: number; name: string; act: Act }): ReactNode {
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    void act(async () => {
      await operate(part, 'restore', { seq, why: String(new FormData(form).get('why') ?? '').trim() });
      form.reset();
      return words.revisions.gone;
    });
  };
  return (
    <form className="rows go-back" onSubmit={onSubmit}>
      <h2>{words.revisions.back(name)}</h2>
      <label>
        <span>{words.revisions.why}</span>
        <input name="why" required maxLength={500} />
      </label>
      <button type="submit">{words.revisions.goBack}</button>
    </form>
  );
}
