import { lazy, Suspense, type ReactNode } from 'react';
import { sectionsOf } from '../../../core/agreement/seating.ts';
import { Refused, troubleText } from '../../library/http.ts';
import { fetchShelf } from '../../library/shelf.ts';
import { useWaiting } from '../../library/useWaiting.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import type { Place } from '../../router.ts';
import { Head } from '../../ui/Head.tsx';
import { Ledge } from '../../ui/Ledge.tsx';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { useHint } from '../../ui/hints.ts';
import { useSay } from '../../ui/useSay.ts';
import { words } from '../../words/words.ts';
import { WaitingList } from '../waiting/WaitingList.tsx';
import { Ensembles } from './Ensembles.tsx';
import { Languages } from './Languages.tsx';
import { Letters } from './Letters.tsx';
import { MyData } from './MyData.tsx';
import { MyHand } from './MyHand.tsx';
import { MySignIn } from './MySignIn.tsx';
import { ProgrammeRow } from './ProgrammeRow.tsx';
import { ShelfTools } from './ShelfTools.tsx';
import { Trail } from './Trail.tsx';

/** Few who come to the Shelf keep the library. */
const Librarian = lazy(async () => ({ default: (await import('./Librarian.tsx')).Librarian }));

/** All programmes; for the librarian also the people and sections they are for. */
export function ShelfPlace({ place }: { place: Place }): ReactNode {
  const { value, fault, again } = useLoaded('shelf', fetchShelf);
  const waiting = useWaiting();
  const { said, attempt } = useSay();
  const stranger = fault instanceof Refused && fault.status === 401;
  const sentence = stranger ? words.shelf.notSignedIn : fault ? troubleText(fault) : value ? words.shelf.where(value.shelf.programmes.length) : words.shelf.fetched;
  const librarian = value?.me.librarian ?? false;
  const hint = useHint(value?.me.id ?? '', ['programme'], []);
  const act = (work: () => Promise<string | null | void>) =>
    attempt(async () => {
      const sentence = await work();
      again();
      return sentence;
    });
  return (
    <>
      <main className="pages shelf">
        <Head left={words.places.shelf} middle={value ? value.me.ensemble.name : words.shelf.middle} right={value ? value.me.name : ''} />
        {value ? (
          <>
            <Ensembles me={value.me} act={act} />
            <ul className="programmes">
              {value.shelf.programmes.map((programme) => (
                <ProgrammeRow key={programme.id} programme={programme} mine={sectionsOf(value.shelf.sections, programme.seatings, value.me.id)} />
              ))}
            </ul>
            {waiting ? <WaitingList parts={waiting.parts} /> : null}
            <MyHand act={act} />
            <Letters act={act} />
            <MySignIn act={act} />
            <MyData name={value.me.name} act={act} />
            {librarian ? (
              <Suspense>
                <Librarian shelf={value.shelf} me={value.me} act={act} />
              </Suspense>
            ) : null}
            {librarian || value.me.memberships.some(({ role }) => role === 'principal') ? <Trail people={value.shelf.people} /> : null}
            {value.me.deputy ? null : (
              <p className="foot">
                <PlaceLink to={{ at: 'archive' }}>{words.archive.link}</PlaceLink>
              </p>
            )}
            <p className="foot">
              <PlaceLink to={{ at: 'rules', rule: null }}>{words.shelf.rules}</PlaceLink>
            </p>
            <Languages act={attempt} />
          </>
        ) : null}
      </main>
      <Ledge
        here={place} sentence={<b>{said ?? sentence}</b>}
        sub={value ? (value.shelf.programmes.length ? (hint ? words.shelf.whereSub : null) : librarian ? words.shelf.emptyLibrarian : value.me.deputy ? words.people.over : words.shelf.emptyOther) : null}
        tools={value ? <ShelfTools /> : null}
      />
    </>
  );
}
