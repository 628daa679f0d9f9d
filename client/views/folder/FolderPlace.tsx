import { useEffect, useState, type ReactNode } from 'react';
import { leads, placeIn, seatedIn } from '../../../core/agreement/seating.ts';
import { firstDay } from '../../../core/season/days.ts';
import type { SectionView } from '../../../core/agreement/wire/http.ts';
import { sizesFor } from '../../engraving/sizes.ts';
import { Refused, troubleText } from '../../library/http.ts';
import { fetchOverview, fetchShelf, type ShelfAndMe } from '../../library/shelf.ts';
import { useWaiting } from '../../library/useWaiting.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import type { Place } from '../../router.ts';
import { Head } from '../../ui/Head.tsx';
import { Ledge } from '../../ui/Ledge.tsx';
import { useHint } from '../../ui/hints.ts';
import { partInHand, rememberPart } from '../../ui/remembered.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { useSay } from '../../ui/useSay.ts';
import { words } from '../../words/words.ts';
import { WaitingList } from '../waiting/WaitingList.tsx';
import { EmptyStaff } from '../stand/EmptyStaff.tsx';
import { FolderTools } from './FolderTools.tsx';
import { Grid } from './Grid.tsx';
import { HandOut } from './HandOut.tsx';
import { LateList } from './LateList.tsx';
import { ProgrammeDays } from './programme/ProgrammeDays.tsx';
import { ProgrammeForm } from './programme/ProgrammeForm.tsx';
import { Seatings } from './programme/Seatings.tsx';
import { Since } from './since/Since.tsx';
import { Prints } from './prints/Prints.tsx';
import { TimeLine } from './TimeLine.tsx';
import { useFolderKeys } from './useFolderKeys.ts';
import { cellInHand, cellsOf, type Cell } from './cells.ts';
import { Imports } from './imports/Imports.tsx';
import { useLaying } from './imports/useLaying.ts';
import { Reuse } from './reuse/Reuse.tsx';
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
  const waiting = useWaiting();
  const [chosen, choose] = useState<string | null>(partInHand);
  const programme = shelf.programmes.find(({ id }) => id === place.programme);
  const sections = shelf.sections.map((section) => seatedIn(section, programme?.seatings ?? []));
  const overview = useLoaded(`overview ${place.programme}`, () => fetchOverview(place.programme));
  const concert = programme && firstDay(programme.days, 'concert');
  const cells = cellsOf(programme?.works ?? [], sections);
  const mine = sections.find((section) => placeIn(section, me.id))?.id;
  const cell = cellInHand(cells, chosen, mine);
  const act = (work: () => Promise<string | null | void>) =>
    attempt(async () => {
      try {
        return await work();
      } finally {
        // What was done before something went wrong is to be seen too.
        again();
        overview.again();
      }
    });
  const laying = useLaying(place.programme, me.librarian, say, again);
  const here = laying.views.filter((view) => view.programme === place.programme || programme?.works.some(({ id }) => id === view.work));
  const inHand = cell?.part.id;
  useEffect(() => {
    if (inHand) rememberPart(inHand);
  }, [inHand]);
  useFolderKeys(cells, cell?.part.id ?? null, (id) => (say(null), choose(id)));
  const sectionFor = (part: Cell['part'] | undefined) => sections.find(({ id }) => id === part?.section?.id);
  const isLed = (section: SectionView | undefined) => me.librarian || leads(section, me.id);
  const section = sectionFor(cell?.part);
  const led = isLed(section);
  const mayPrint = cell?.work.parts.filter((part) => isLed(sectionFor(part))) ?? [];
  const hint = useHint(me.id, ['part'], ['programme']);
  const gone = !programme;
  const sentence = gone ? words.folder.gone : cell ? words.folder.where(cell.work.title, cell.part.name) : words.folder.empty;
  const sub = cell ? words.folder.state(words.stages[cell.part.stage], cell.part.open, cell.part.locked) : me.librarian ? words.score.drop : null;
  return (
    <>
      <main className="pages folder">
        <Head left={programme?.title ?? ''} middle={concert ? words.day(concert) : ''} right={me.librarian ? `${me.name}, ${words.folder.library}` : me.name} />
        {programme ? <ProgrammeDays programme={programme} /> : null}
        {programme ? <TimeLine programme={programme} /> : null}
        {cell ? <Grid cells={cells} overview={overview.value} chosen={cell.part.id} onChoose={(id) => (say(null), choose(id))} /> : <EmptyStaff width={music} words={words.staff.empty} />}
        <Imports views={here} onLeave={laying.leave} />
        {overview.value ? <LateList cells={cells} overview={overview.value} onChoose={(id) => (say(null), choose(id))} /> : null}
        {waiting ? <WaitingList parts={waiting.parts.filter((part) => part.programme === place.programme)} /> : null}
        {cell ? <Since key={`since ${cell.part.id} ${cell.part.head}`} cell={cell} section={section ?? null} /> : null}
        {cell ? <WholePiece key={`whole ${cell.work.id}`} work={cell.work} say={say} /> : null}
        {programme && cell ? <Reuse key={`reuse ${cell.work.id}`} me={me} programme={programme} sections={sections} cell={cell} act={act} say={say} /> : null}
        {cell ? <HandOut me={me} leads={led} cell={cell} sections={sections} act={act} /> : null}
        {cell && mayPrint.length ? <Prints key={`prints ${cell.work.id}`} work={cell.work} parts={mayPrint} inHand={cell.part.id} sections={sections} say={say} /> : null}
        {programme ? <Seatings me={me} shelf={shelf} programme={programme} cells={cells} act={act} /> : null}
        {programme && me.librarian ? <ProgrammeForm programme={programme} act={act} /> : null}
      </main>
      <Ledge
        here={place} sentence={<b>{said ?? sentence}</b>} sub={said ? null : <>{sub} {cell && hint ? <span className="by-key">{words.folder.choose}</span> : null}</>}
        tools={programme ? <FolderTools me={me} cell={cell ?? null} led={mayPrint} laying={laying} act={act} say={say} /> : null}
      />
    </>
  );
}
