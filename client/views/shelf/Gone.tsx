import type { ReactNode } from 'react';
import { eraseGone, fetchGone, takeBack } from '../../library/people.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { Fold } from '../../ui/Fold.tsx';
import { words } from '../../words/words.ts';
import { Erase } from './Erase.tsx';
import type { Act } from './NewProgramme.tsx';

/** Who has left: they may come back as themselves, or be erased. `people`: how many are here, so that the list is asked for anew when somebody goes. */
export function Gone({ people, act }: { people: number; act: Act }): ReactNode {
  const { value, again } = useLoaded(`gone ${people}`, fetchGone);
  if (!value?.length) return null;
  const back = (id: string, name: string) =>
    void act(async () => {
      await takeBack(id);
      again();
      return words.people.isBack(name);
    });
  const erase = (id: string) => (typed: string, comments: boolean) =>
    void act(async () => {
      await eraseGone(id, typed, comments);
      again();
      return words.mine.erased;
    });
  return (
    <section className="rows people">
      <h2>{words.people.gone}</h2>
      <ul className="names">
        {value.map(({ id, name, leftAt }) => (
          <li key={id}>
            <Fold of={id} word={<><b>{name}</b> <span className="quiet">{words.people.goneOn(words.day(leftAt.slice(0, 10)))}</span></>}>
              <Erase name={name} what={words.mine.eraseOther(name)} onErase={erase(id)} />
            </Fold>
            <button type="button" onClick={() => back(id, name)} aria-label={`${words.people.back}: ${name}`}>
              {words.people.back}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
