import { useRef, type ReactNode } from 'react';
import { archiveAddress, fetchSets, takeIn } from '../../library/archive.ts';
import { troubleText } from '../../library/http.ts';
import { fetchShelf } from '../../library/shelf.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { go, type Place } from '../../router.ts';
import { Head } from '../../ui/Head.tsx';
import { Ledge } from '../../ui/Ledge.tsx';
import { LedgeWord } from '../../ui/ledgeParts.tsx';
import { usePlaceKeys } from '../../ui/usePlaceKeys.ts';
import { useSay } from '../../ui/useSay.ts';
import { words } from '../../words/words.ts';

/** Every set of marks that was put by; the librarian takes all of them along, or takes others in. */
export function ArchivePlace({ place }: { place: Place }): ReactNode {
  const { value: sets, fault, again } = useLoaded('archive', fetchSets);
  const { value: mine } = useLoaded('shelf', fetchShelf);
  const { said, say, attempt } = useSay();
  const input = useRef<HTMLInputElement>(null);
  usePlaceKeys({ Escape: () => go({ at: 'shelf' }) });
  const take = (file: File) => {
    say(words.archive.reading);
    void attempt(async () => {
      const { added, known } = await takeIn(file);
      again();
      return words.archive.takenIn(added, known);
    });
  };
  const librarian = mine?.me.librarian ?? false;
  return (
    <>
      <main className="pages archive">
        <Head left={words.places.archive} middle={words.archive.middle} right={mine?.me.name ?? ''} />
        {sets?.length === 0 ? <p className="none">{words.archive.none}</p> : null}
        <ul className="sets">
          {sets?.map(({ id, title, composer, season, conductor, ensemble, keptBy, keptAt, fileName, parts }) => (
            <li key={id} data-set={id}>
              <h2>
                {title} <small>{composer}</small>
              </h2>
              <p>
                <b>{words.archive.under(season, conductor, ensemble)}</b> <span>{words.archive.keptBy(keptBy, words.day(keptAt))}</span> <span>{fileName}</span>
              </p>
              <p>{parts.map(({ name, section, marks }) => words.archive.part(section ?? name, marks)).join(' · ')}</p>
            </li>
          ))}
        </ul>
      </main>
      <Ledge
        here={place} sentence={<b>{said ?? (fault ? troubleText(fault) : sets ? words.archive.where(sets.length) : words.reuse.fetched)}</b>} sub={<span className="by-key">{words.archive.sub}</span>}
        tools={
          librarian ? (
            <div className="word-row">
              {sets?.length ? (
                <a className="ledge-word" href={archiveAddress} download>
                  <b>{words.archive.all}</b>
                  <small aria-hidden="true">.zip</small>
                </a>
              ) : null}
              <LedgeWord word={words.archive.takeIn} onPress={() => input.current?.click()} />
              <input
                ref={input} type="file" className="offstage" tabIndex={-1} accept=".zip" aria-label={words.archive.takeIn}
                onChange={(event) => {
                  const file = event.target.files?.[0];
                  if (file) take(file);
                  event.target.value = '';
                }}
              />
            </div>
          ) : null
        }
      />
    </>
  );
}
