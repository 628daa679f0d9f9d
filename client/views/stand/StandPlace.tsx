import { useEffect, useRef, type ReactNode } from 'react';
import { troubleText } from '../../library/http.ts';
import { keptText } from '../../library/kept/library.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { usePartSession } from '../../library/usePartSession.ts';
import type { Place } from '../../router.ts';
import { Ledge } from '../../ui/Ledge.tsx';
import { warmEngraver } from '../../engraving/worker.ts';
import { sizesFor } from '../../engraving/sizes.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { words } from '../../words/words.ts';
import { EmptyStaff } from './EmptyStaff.tsx';
import { Stand } from './Stand.tsx';

/** Fetches the part for the stand; its staff stands at once, empty. */
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
  if (opened) return <Stand key={opened.view.id} opened={opened} text={text} place={place} />;
  const { music } = sizesFor(width, height);
  return (
    <>
      <main className="pages">
        <div className="systems waiting">
          {Array.from({ length: 5 }, (_, i) => (
            <EmptyStaff key={i} width={music} />
          ))}
        </div>
      </main>
      <Ledge here={place} sentence={fault ? <b>{troubleText(fault)}</b> : words.partComes} />
    </>
  );
}
