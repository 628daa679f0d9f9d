import type { CSSProperties, MouseEvent, ReactNode } from 'react';
import { AIMS, type Aim } from '../../../../core/fingering/aims.ts';
import type { EngravedSystem } from '../../../../core/engraving/geometry.ts';
import { LETTERS } from '../../../fingering/messages.ts';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import { measureName } from '../sentence.ts';
import { factsSide } from '../slipWindow.ts';
import { CompareView } from './CompareView.tsx';
import { OfferSlip } from './OfferSlip.tsx';

function stretch(desk: Desk, { geometry }: EngravedSystem): { x0: number; x1: number } {
  const { asked } = desk.offers;
  const [from, to] = [desk.facts.notes.get(asked!.from) ?? asked!.measure, desk.facts.notes.get(asked!.to) ?? asked!.measure];
  const covered = geometry.measures.filter(({ ordinal }) => ordinal >= from && ordinal <= to);
  return { x0: Math.min(...covered.map(({ x0 }) => x0), geometry.width), x1: Math.max(...covered.map(({ x1 }) => x1), 0) };
}

/** What can be played in the passage that was asked about, slip under slip, each with what it asks of the hand. */
export function OffersView({ desk, systemId, drawing }: { desk: Desk; systemId: string; drawing: EngravedSystem }): ReactNode {
  const { offers } = desk;
  if (!offers.asked) return null;
  const [from, to] = [offers.asked.from, offers.asked.to].map((note) => measureName(desk, desk.facts.notes.get(note) ?? 0));
  const choose = (event: MouseEvent<HTMLButtonElement>, aim: Aim) => {
    // After a click the keys belong to the slips again; who came here by keyboard stays.
    if (event.detail > 0) event.currentTarget.blur();
    offers.setAim(aim);
  };
  const reach = stretch(desk, drawing);
  const space = { '--x0': reach.x0, '--x1': reach.x1 };
  return (
    <section className={`open-measure offers ${factsSide(reach, drawing.geometry.width)}`} style={space as CSSProperties} aria-label={words.offers.title(words.inMeasures(from!, to!))}>
      <h3>{words.offers.title(words.inMeasures(from!, to!))}</h3>
      <p className="aims" role="group" aria-label={words.offers.aim}>
        {AIMS.map((aim) => (
          <button key={aim} type="button" aria-pressed={aim === offers.aim} onClick={(event) => choose(event, aim)}>
            {words.offers.aims[aim]}
          </button>
        ))}
        <button type="button" className="leave" onClick={offers.leave}>
          {words.line.leave} <kbd aria-hidden="true">Esc</kbd>
        </button>
      </p>
      <div role="status">
        {offers.state === 'working' ? <p className="none">{words.offers.working}</p> : null}
        {offers.state === 'failed' ? <p className="watch">{words.offers.failed}</p> : null}
        {offers.found?.refusals.map(({ note, text }) => (
          <p key={note} className="watch">
            {text}
          </p>
        ))}
      </div>
      <CompareView desk={desk} systemId={systemId} drawing={drawing} reach={reach} />
      {offers.found ? (
        <div className="slips">
          {offers.found.offers.map((offer, i) => (
            <OfferSlip key={LETTERS[i]} desk={desk} offer={offer} letter={LETTERS[i]!} index={i} systemId={systemId} drawing={drawing} reach={reach} />
          ))}
        </div>
      ) : null}
    </section>
  );
}
