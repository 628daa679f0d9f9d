import type { ReactNode } from 'react';
import { leads } from '../../../../core/agreement/seating.ts';
import type { Me, ProgrammeView, SectionView } from '../../../../core/agreement/wire/http.ts';
import { fetchOffers } from '../../../library/archive.ts';
import { useLoaded } from '../../../library/useLoaded.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { words } from '../../../words/words.ts';
import type { Act } from '../../shelf/NewProgramme.tsx';
import type { Cell } from '../cells.ts';
import { Misprints } from './Misprints.tsx';
import { Offer } from './Offer.tsx';
import { PutBy } from './PutBy.tsx';
import { Travel } from './Travel.tsx';

/** What the work in hand brings from earlier seasons and takes to later ones; its bows carried across the sections; its wrong notes. `sections`: as they sit in the programme. */
export function Reuse({ me, programme, sections, cell, act, say }: { me: Me; programme: ProgrammeView; sections: readonly SectionView[]; cell: Cell; act: Act; say(sentence: string): void }): ReactNode {
  const { work, part } = cell;
  const offers = useLoaded(`offers ${work.id}`, () => fetchOffers(work.id));
  const led = sections.some((section) => leads(section, me.id) && work.parts.some((one) => one.section?.id === section.id));
  const mayLay = me.librarian || led;
  const actAnd = (working: () => Promise<string | null | void>) =>
    act(async () => {
      const sentence = await working();
      offers.again();
      return sentence;
    });
  return (
    <section className="reuse rows" aria-labelledby="reuse">
      <h2 id="reuse">{words.reuse.title(work.title)}</h2>
      {offers.value?.map((offer) => <Offer key={offer.id} work={work} offer={offer} mayLay={mayLay} mayInk={led} act={act} say={say} />)}
      {offers.value?.length === 0 ? <p className="none">{words.reuse.nothing}</p> : null}
      {me.librarian ? (
        <Fold word={words.reuse.putBy} of="put-by">
          <PutBy work={work.id} programme={programme} act={actAnd} />
        </Fold>
      ) : null}
      {mayLay && work.parts.length > 1 ? (
        <Fold word={words.reuse.travel(part.name)} of="travel">
          <Travel key={part.id} work={work.id} part={part.id} act={act} say={say} />
        </Fold>
      ) : null}
      <Fold word={words.reuse.misprints} of="misprints">
        <Misprints work={work.id} librarian={me.librarian} act={act} />
      </Fold>
    </section>
  );
}
