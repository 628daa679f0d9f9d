import { useEffect, useState, type ReactNode } from 'react';
import { sizesFor } from '../../engraving/sizes.ts';
import { Refused, troubleText } from '../../library/http.ts';
import { fetchShelf, type ShelfAndMe } from '../../library/shelf.ts';
import { fetchWaiting } from '../../library/waiting.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import type { Place } from '../../router.ts';
import { Head } from '../../ui/Head.tsx';
import { Ledge } from '../../ui/Ledge.tsx';
import { useHint } from '../../ui/hints.ts';
import { rememberPart } from '../../ui/remembered.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { useSay } from '../../ui/useSay.ts';
import { words } from '../../words/words.ts';
import { WaitingList } from '../waiting/WaitingList.tsx';
import { EmptyStaff } from '../stand/EmptyStaff.tsx';
import { FolderTools } from './FolderTools.tsx';
import { Grid } from './Grid.tsx';
import { HandOut } from './HandOut.tsx';
import { TimeLine } from './TimeLine.tsx';
import { useFolderKeys } from './useFolderKeys.ts';
import { cellsOf } from './cells.ts';
import { Imports } from './imports/Imports.tsx';
import { useLaying } from './imports/useLaying.ts';
import { WholePiece } from './piece/WholePiece.tsx';

/** One programme: works down, sections across, and what is to be handed out. */
export function FolderPlace({ place }: { place: Extract<Place, { at: 'folder' }> }): ReactNode {
  const { value, fault, again } = useLoaded('shelf', fetchShelf);
  if (value) return <Folder place={place} {...value} again={again} />;
  const stranger = fault instanceof Refused && fault.status === 401;
  return (
    <>
      <main className="pages" />
      <Ledge here={place} sentence={<b>{stranger ? words.shelf.notSignedIn : fault ? troubleText(fault) : words.shelf.fetched}</b>} />
    </>
  );
}

function Folder({ place, me, shelf, again }: ShelfAndMe & { place: Extract<Place, { at: 'folder' }>; again(): void }): ReactNode {
  const { said, say, attempt } = useSay();
  const size = useWindowSize();
  const { music } = sizesFor(size.width, size.height);
  const waiting = useLoaded('waiting', fetchWaiting);
  const [chosen, choose] = useState<string | null>(null);
  const programme = shelf.programmes.find(({ id }) => id === place.programme);
  const cells = cellsOf(programme?.works ?? [], shelf.sections);
  const mine = me.memberships[0]?.section;
  const all = cells.rows.flatMap(({ parts }) => parts.flat());
  const cell = all.find(({ part }) => part.id === chosen) ?? all.find(({ part }) => part.section?.id === mine) ?? all[0];
  const act = (work: () => Promise<string | null | void>) =>
    attempt(async () => {
      const sentence = await work();
      again();
      return sentence;
    });
  const laying = useLaying(place.programme, me.librarian, say, again);
  const here = laying.views.filter((view) => view.programme === place.programme || programme?.works.some(({ id }) => id === view.work));
  const inHand = cell?.part.id;
  useEffect(() => {
    if (inHand) rememberPart(inHand);
  }, [inHand]);
  useFolderKeys(cells, cell?.part.id ?? null, (id) => (say(null), choose(id)));
  const hint = useHint(me.id, ['part'], ['programme']);
  const gone = !programme;
  const sentence = gone ? words.folder.gone : cell ? words.folder.where(cell.work.title, cell.part.name) : words.folder.empty;
  const sub = cell ? words.folder.state(words.stages[cell.part.stage], cell.part.open, cell.part.locked) : me.librarian ? words.score.drop : null;
  return (
    <>
      <main className="pages folder">
        <Head left={programme?.title ?? ''} middle={programme?.concert ? words.day(programme.concert) : ''} right={me.librarian ? `${me.name}, ${words.folder.library}` : me.name} />
        {programme ? <TimeLine programme={programme} /> : null}
        {all.length ? <Grid cells={cells} chosen={cell?.part.id ?? null} onChoose={(id) => (say(null), choose(id))} /> : <EmptyStaff width={music} words={words.staff.empty} />}
        <Imports views={here} onLeave={laying.leave} />
        {waiting.value ? <WaitingList parts={waiting.value.parts.filter((part) => part.programme === place.programme)} /> : null}
        {cell ? <WholePiece key={cell.work.id} work={cell.work} say={say} /> : null}
        {cell ? <HandOut me={me} cell={cell} sections={shelf.sections} act={act} /> : null}
      </main>
      <Ledge
        here={place} sentence={<b>{said ?? sentence}</b>} sub={said ? null : <>{sub} {cell && hint ? words.folder.choose : null}</>}
        tools={programme ? <FolderTools me={me} cell={cell ?? null} laying={laying} act={act} say={say} /> : null}
      />
    </>
  );
}
