import { useEffect, useMemo, useRef, type ReactNode } from 'react';
import type { Offer } from '../../../fingering/messages.ts';
import type { EngravedSystem } from '../../../../core/engraving/geometry.ts';
import type { ShownMark } from '../../../../core/engraving/marks/placeMarks.ts';
import { selected } from '../../../tools/caret/reducer.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { words } from '../../../words/words.ts';
import { BoardView } from '../board/BoardView.tsx';
import type { Desk } from '../desk.ts';
import { pencilled } from '../shownMarks.ts';
import { Slip } from '../Slip.tsx';
import { HearRow } from '../hearing/HearRow.tsx';
import type { OtherLine } from '../otherLines.ts';
import { UnderOther } from '../UnderOther.tsx';
import { toldIn } from './compared.ts';
import { HandPicture } from './HandPicture.tsx';
import { handRange } from './handShapes.ts';
import { StepRow } from './StepRow.tsx';
import { takeOffer } from './take.ts';

interface Props {
  desk: Desk;
  offer: Offer;
  letter: string;
  index: number;
  systemId: string;
  drawing: EngravedSystem;
  reach: { x0: number; x1: number };
  /** The rest of the passage, where it is not on this line alone. */
  others: readonly OtherLine[];
}

function Facts({ offer, letter }: { offer: Offer; letter: string }): ReactNode {
  const { facts } = offer;
  const alone = facts.steps.filter(({ slideAlone }) => slideAlone >= 0.5).length;
  return (
    <>
      <h3>
        <em>{letter}</em> <b>{words.offers.by[offer.by]}</b>
      </h3>
      <p className="why">{words.offers.facts(facts.shifts, facts.widest ? { mm: facts.widest.mm, zone: facts.widest.zone, fingers: facts.widest.fingers } : null, facts.slides.length, alone)}</p>
    </>
  );
}

function Whole({ desk, offer, letter, index, drawing, reach, others, marks, inHand }: Omit<Props, 'systemId'> & { marks: readonly ShownMark[]; inHand: readonly string[] }): ReactNode {
  const name = words.offers.label(letter);
  const least = Math.min(...(desk.offers.found?.offers ?? [offer]).map(({ cost }) => cost));
  const setting = useMemo(() => ({ told: toldIn(offer), range: handRange(offer.path) }), [offer]);
  const hand = (geometry: EngravedSystem['geometry']): ReactNode => (
    <HandPicture path={offer.path} geometry={geometry} inHand={inHand} label={`${words.offers.picture(name)} ${offer.totals}`} setting={setting} onNote={(note) => desk.move({ type: 'put', at: note })} />
  );
  return (
    <div className="offer-whole">
      <div className="lines">
        {hand(drawing.geometry)}
        {others.map((other) => (
          <UnderOther key={other.id} desk={desk} reach={reach} width={drawing.geometry.width} other={other}>
            <Slip id={`offer-${index}-${other.id}`} label={name} systemId={other.id} drawing={other.drawing} reach={other.reach} selected={inHand} chosen marks={marks} onChoose={() => {}} />
            {hand(other.drawing.geometry)}
          </UnderOther>
        ))}
      </div>
      <div className="told">
        <HearRow desk={desk} index={index} />
        <p>
          <b>{words.section.inWords}</b> {offer.totals} {offer.beside.join(' ')}
        </p>
        <BoardView desk={desk} path={offer.path} name={name} />
        {offer.cautions.map((caution) => (
          <p key={caution} className="watch">
            {caution}
          </p>
        ))}
        <Fold word={words.offers.steps}>
          <table>
            <tbody>
              {offer.steps.map(({ note, name: pitch, text }) => (
                <StepRow key={note} desk={desk} note={note} pitch={pitch} texts={[text]} />
              ))}
            </tbody>
          </table>
        </Fold>
        <Fold word={words.offers.costs(offer.cost, offer.cost - least)}>
          <table>
            <tbody>
              {offer.terms.map(({ term, cost }) => (
                <tr key={term}>
                  <th scope="row">{term}</th>
                  <td>{cost.toFixed(2)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Fold>
      </div>
    </div>
  );
}

/** One fingering as a slip of other paper: its few figures on the notes, what it asks, and when it is in focus the hand over time. */
export function OfferSlip({ desk, offer, letter, index, systemId, drawing, reach, others }: Props): ReactNode {
  const { sides, found } = desk.offers;
  const several = (found?.offers.length ?? 0) > 1;
  const chosen = desk.offers.chosen === index;
  const label = words.offers.label(letter);
  const inHand = selected(desk.caret, desk.walk.ids);
  const marks = pencilled(offer.marks, 'all', desk.inForce, desk.index);
  const row = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The first one hangs under the line already brought into view.
    if (chosen && index > 0) row.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen, index]);
  return (
    <>
      <div className="slip-row" data-offer={letter} ref={row}>
        <Slip
          id={`offer-${index}`} label={label} systemId={systemId} drawing={drawing} reach={reach} selected={inHand} chosen={chosen}
          marks={marks} onChoose={() => desk.offers.choose(index)}
        />
        <article className={chosen ? 'facts chosen' : 'facts'} aria-label={label} aria-current={chosen || undefined} onClick={() => desk.offers.choose(index)}>
          <Facts offer={offer} letter={letter} />
          {chosen || !offer.beside[0] ? null : <p className="beside">{offer.beside[0]}</p>}
          <p className="acts">
            <button type="button" onClick={() => takeOffer(desk, index)}>
              {words.offers.take} {chosen ? <kbd aria-hidden="true">Enter</kbd> : null}
            </button>
            {chosen ? null : (
              <button type="button" onClick={() => desk.offers.choose(index)}>
                {words.offers.look}
              </button>
            )}
            {chosen && several ? (['a', 'b'] as const).map((side) => (
              <button key={side} type="button" aria-pressed={sides?.[side] === index} onClick={() => desk.offers.lay(side)}>
                {words.compare.lay[side]} <kbd aria-hidden="true">{side}</kbd>
              </button>
            )) : null}
          </p>
        </article>
      </div>
      {chosen && !sides ? <Whole desk={desk} offer={offer} letter={letter} index={index} drawing={drawing} reach={reach} others={others} marks={marks} inHand={inHand} /> : null}
    </>
  );
}
