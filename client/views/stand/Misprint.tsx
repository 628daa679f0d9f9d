import type { FormEvent, ReactNode } from 'react';
import { writeErratum } from '../../library/archive.ts';
import { troubleText } from '../../library/http.ts';
import { Fold } from '../../ui/Fold.tsx';
import { words } from '../../words/words.ts';
import type { Desk } from './desk.ts';
import { measureName } from './sentence.ts';

/** A wrong note of the edition, written down at its measure for the librarian; it is no marking and goes to no vote. */
export function Misprint({ desk, measure }: { desk: Desk; measure: number }): ReactNode {
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const said = new FormData(form);
    writeErratum(desk.view.id, measure, String(said.get('says')).trim(), String(said.get('should')).trim()).then(
      () => {
        form.reset();
        desk.say(words.misprint.written(measureName(desk, measure)));
      },
      (fault: unknown) => desk.say(troubleText(fault)),
    );
  };
  return (
    <Fold word={words.misprint.title} className="misprint" of="misprint">
      <form className="rows" onSubmit={onSubmit}>
        <label>
          <span>{words.misprint.says}</span>
          <input name="says" required maxLength={300} />
        </label>
        <label>
          <span>{words.misprint.should}</span>
          <input name="should" required maxLength={300} />
        </label>
        <button type="submit">{words.misprint.write}</button>
      </form>
    </Fold>
  );
}
