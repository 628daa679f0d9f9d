import type { CSSProperties, MouseEvent, ReactNode } from 'react';
import { AIMS, type Aim } from '../../../../core/fingering/aims.ts';
import type { EngravedSystem } from '../../../../core/engraving/geometry.ts';
import type { EngravingSnapshot } from '../../../engraving/engraving.ts';
import { LETTERS } from '../../../fingering/messages.ts';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import { otherLines, systemName } from '../otherLines.ts';
import { measureName } from '../sentence.ts';
import { factsSide, slipWindow } from '../slipWindow.ts';
import { CompareView } from './CompareView.tsx';
import { OfferSlip } from './OfferSlip.tsx';

/** What can be played in the passage that was asked about, slip under slip, each with what it asks of the hand. */
export function OffersView({ desk, systems, here, drawing }: { desk: Desk; systems: EngravingSnapshot['systems']; here: number; drawing: EngravedSystem }): ReactNode {
  const { offers } = desk;
  if (!offers.asked) return null;
  const { measure } = offers.asked;
  const [first, last] = [desk.facts.notes.get(offers.asked.from) ?? measure, desk.facts.notes.get(offers.asked.to) ?? measure];
  const passage = words.inMeasures(measureName(desk, first), measureName(desk, last));
  const choose = (event: MouseEvent<HTMLButtonElement>, aim: Aim) => {
    // After a click the keys belong to the slips again; who came here by keyboard stays.
    if (event.detail > 0) event.currentTarget.blur();
    offers.setAim(aim);
  };
  const reach = slipWindow(drawing.geometry, measure, [{ from: first, to: last }]);
  const on = { systemId: systemName(here), drawing, reach, others: otherLines(systems, here, first, last) };
  const space = { '--x0': reach.x0, '--x1': reach.x1 };
  return (
    <section className={`open-measure offers ${factsSide(reach, drawing.geometry.width)}`} style={space as CSSProperties} aria-label={words.offers.title(passage)}>
      <h3>{words.offers.title(passage)}</h3>
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
      <CompareView desk={desk} {...on} />
      {offers.found ? (
        <div className="slips">
          {offers.found.offers.map((offer, i) => (
            <OfferSlip key={LETTERS[i]} desk={desk} offer={offer} letter={LETTERS[i]!} index={i} {...on} />
          ))}
        </div>
      ) : null}
    </section>
  );
}
