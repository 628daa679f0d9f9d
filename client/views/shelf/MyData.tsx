import type { ReactNode } from 'react';
import { clearDesk } from '../../library/leave.ts';
import { eraseMe, keptAddress } from '../../library/people.ts';
import { go } from '../../router.ts';
import { Fold } from '../../ui/Fold.tsx';
import { words } from '../../words/words.ts';
import { Erase } from './Erase.tsx';
import type { Act } from './NewProgramme.tsx';

/** What is kept about whoever reads this: to take along, or to end. */
export function MyData({ name, act }: { name: string; act: Act }): ReactNode {
  const erase = (typed: string, comments: boolean) =>
    void act(async () => {
      await eraseMe(typed, comments);
      await clearDesk();
      go({ at: 'signIn', token: null });
      return words.mine.erased;
    });
  return (
    <section className="rows my-data">
      <h2>{words.mine.title}</h2>
      <p>{words.mine.what}</p>
      <p>
        <a href={keptAddress} download>
          {words.mine.fetch}
        </a>
      </p>
      <Fold word={words.mine.erase}>
        <Erase name={name} what={words.mine.eraseWhat} onErase={erase} />
      </Fold>
    </section>
  );
}
