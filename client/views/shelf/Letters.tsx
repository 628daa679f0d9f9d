import type { FormEvent, ReactNode } from 'react';
import { fetchLetters, forgetLetters, keepLetters } from '../../library/letters.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { languageNow } from '../../words/language.ts';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';

/** Whether letters come, and where they go; in the language that is spoken when the address is given. */
export function Letters({ act }: { act: Act }): ReactNode {
  const { value, again } = useLoaded('letters', fetchLetters);
  if (!value) return null;
  const { minutes, wish } = value;
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const address = String(new FormData(event.currentTarget).get('address')).trim();
    void act(async () => {
      await keepLetters(address, languageNow());
      again();
      return words.letters.kept(address);
    });
  };
  const forget = () =>
    void act(async () => {
      await forgetLetters();
      again();
      return words.letters.forgotten;
    });
  return (
    <section className="rows my-letters">
      <h2>{words.letters.title}</h2>
      <p>{minutes === null ? words.letters.none : words.letters.what(minutes)}</p>
      {minutes === null && !wish ? null : (
        <form onSubmit={onSubmit} key={wish?.address ?? 'none'}>
          <label>
            <span>{words.letters.address}</span>
            <input name="address" type="email" required maxLength={200} autoComplete="email" defaultValue={wish?.address ?? ''} />
          </label>
          <button type="submit">{words.letters.keep}</button>
          {wish ? (
            <button type="button" onClick={forget}>
              {words.letters.forget}
            </button>
          ) : null}
        </form>
      )}
    </section>
  );
}
