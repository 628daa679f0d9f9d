import type { ReactNode } from 'react';
import { errataAddress, fetchErrata, settleErratum } from '../../../library/archive.ts';
import { useLoaded } from '../../../library/useLoaded.ts';
import { Tick } from '../../../ui/Tick.tsx';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';

/** Wrong notes of the edition, apart from all bowings; the librarian says which were put right. */
export function Misprints({ work, librarian, act }: { work: string; librarian: boolean; act: Act }): ReactNode {
  const { value, again } = useLoaded(`errata ${work}`, () => fetchErrata(work));
  const settle = (id: string, on: boolean) =>
    void act(async () => {
      await settleErratum(id, on);
      again();
    });
  if (!value) return null;
  if (!value.length) return <p className="none">{words.reuse.misprintsNone}</p>;
  return (
    <>
      <ul className="misprints">
        {value.map(({ id, part, measure, number, says, should, by, at, settled }) => (
          <li key={id}>
            {words.reuse.misprint(part, words.inMeasures(number || String(measure), number || String(measure)), says, should)} <span>{words.reuse.foundBy(by, words.day(at))}</span>
            {librarian ? (
              <Tick checked={settled !== null} onTurn={(on) => settle(id, on)}>
                {words.reuse.putRight}
              </Tick>
            ) : settled ? (
              <span>{words.reuse.putRight}</span>
            ) : null}
          </li>
        ))}
      </ul>
      <a href={errataAddress(work)} download aria-label={`${words.reuse.list}, .csv`}>
        {words.reuse.list} .csv
      </a>
    </>
  );
}
