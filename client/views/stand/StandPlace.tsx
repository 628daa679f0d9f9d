import { useEffect, useRef, type ReactNode } from 'react';
import { troubleText } from '../../library/http.ts';
import { keptText } from '../../library/kept/library.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { usePartSession } from '../../library/usePartSession.ts';
import type { Place } from '../../router.ts';
import { Ledge } from '../../ui/Ledge.tsx';
import { warmEngraver } from '../../engraving/worker.ts';
import { paperSizesFor, sizesFor } from '../../engraving/sizes.ts';
import { useEngraving } from '../../engraving/useEngraving.ts';
import { firstScreenShown } from '../../offline/firstScreen.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { words } from '../../words/words.ts';
import { EmptyStaff } from './EmptyStaff.tsx';
import { Stand } from './Stand.tsx';
import { useView } from './view/useView.ts';

/** Fetches the part for the stand; its staff stands at once, empty. It is engraved as soon as its notes are there, whatever else is still on its way. */
export function StandPlace({ place }: { place: Extract<Place, { at: 'stand' }> }): ReactNode {
  const { opened, fault } = usePartSession(place.part);
  const edition = opened?.view.part;
  const { value: text, again } = useLoaded(place.part, () => keptText(`/parts/${place.part}/engraving`));
  const known = useRef(edition);
  useEffect(() => {
    // The part was exchanged for a corrected one.
    if (known.current && edition && known.current !== edition) again();
    known.current = edition;
  }, [edition, again]);
  useEffect(warmEngraver, []);
  const { width, height } = useWindowSize();
  const [lie, turn] = useView();
  const sizes = (lie.form === 'paper' ? paperSizesFor : sizesFor)(width, height, lie.zoom);
  const { store, engraved } = useEngraving(text, sizes.music, sizes.spacing);
  const rests = engraved.whole || engraved.failed !== null || fault !== null;
  useEffect(() => {
    if (rests) firstScreenShown();
  }, [rests]);
  if (opened) return <Stand key={opened.view.id} opened={opened} text={text} place={place} lies={{ ...sizes, lie, turn, store, engraved }} />;
  return (
    <>
      <main className="pages">
        <div className="systems waiting">
          {Array.from({ length: 5 }, (_, i) => (
            <EmptyStaff key={i} width={sizes.music} />
          ))}
        </div>
      </main>
      <Ledge here={place} sentence={fault ? <b>{troubleText(fault)}</b> : words.partComes} />
    </>
  );
}
