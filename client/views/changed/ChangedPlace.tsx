import type { ReactNode } from 'react';
import { fetchTwoEditions, fetchTwoTexts } from '../../library/carried.ts';
import { troubleText } from '../../library/http.ts';
import { useFolderOf } from '../../library/useFolderOf.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import type { Place } from '../../router.ts';
import { Head } from '../../ui/Head.tsx';
import { Ledge } from '../../ui/Ledge.tsx';
import { words } from '../../words/words.ts';
import { Changed } from './Changed.tsx';

/** What a corrected edition changed in one part. */
export function ChangedPlace({ place }: { place: Extract<Place, { at: 'changed' }> }): ReactNode {
  const { value, fault, again } = useLoaded(`changed ${place.part} ${place.revision}`, () => fetchTwoEditions(place.part, place.revision));
  const isThere = Boolean(value?.carried);
  const texts = useLoaded(`changed texts ${place.part} ${place.revision} ${isThere}`, () => (isThere ? fetchTwoTexts(place.part, place.revision) : Promise.resolve(null)));
  useFolderOf(value?.view.work.id ?? null);
  if (value?.carried) return <Changed place={place} view={value.view} carried={value.carried} texts={texts.value} again={again} />;
  return (
    <>
      <main className="pages changed">{value ? <Head left={words.changed.title(value.view.part.name)} middle={value.view.work.title} /> : null}</main>
      <Ledge here={place} sentence={<b>{fault ? troubleText(fault) : value ? words.changed.none : words.changed.comes}</b>} />
    </>
  );
}
