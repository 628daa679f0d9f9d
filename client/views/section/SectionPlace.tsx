import type { ReactNode } from 'react';
import { troubleText } from '../../library/http.ts';
import { keptText } from '../../library/kept/library.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { usePartSession } from '../../library/usePartSession.ts';
import type { Place } from '../../router.ts';
import { Ledge } from '../../ui/Ledge.tsx';
import { words } from '../../words/words.ts';
import { Section } from './Section.tsx';

/** Fetches the part and its section. */
export function SectionPlace({ place }: { place: Extract<Place, { at: 'section' }> }): ReactNode {
  const { opened, fault, again } = usePartSession(place.part);
  const text = useLoaded(`engraving ${place.part}`, () => keptText(`/parts/${place.part}/engraving`));
  if (opened?.view.section) return <Section key={opened.view.id} opened={opened} section={opened.view.section} text={text.value} again={again} place={place} />;
  const sentence = fault ? troubleText(fault) : opened ? words.section.noSection : words.partComes;
  return (
    <>
      <main className="pages" />
      <Ledge here={place} sentence={<b>{sentence}</b>} sub={opened ? words.section.noSectionSub : null} />
    </>
  );
}
