import { useEffect, useMemo, useRef, type CSSProperties, type ReactNode } from 'react';
import { SpectaclesInline } from '../../drawing/Spectacles.tsx';
import { lensOf } from '../../drawing/lensOf.ts';
import type { EngravedSystem } from '../../../core/engraving/geometry.ts';
import type { EngravingSnapshot } from '../../engraving/engraving.ts';
import { selected } from '../../tools/caret/reducer.ts';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { words } from '../../words/words.ts';
import { openMeasure, slipsHere } from './commands.ts';
import type { Desk } from './desk.ts';
import { Misprint } from './Misprint.tsx';
import { otherLines, systemName } from './otherLines.ts';
import { Past } from './Past.tsx';
import { findingText, whyText } from '../findingText.ts';
import { PastView } from './past/PastView.tsx';
import { measureName, slipName } from './sentence.ts';
import { pencilled } from './shownMarks.ts';
import { Slip } from './Slip.tsx';
import { SlipFacts } from './SlipFacts.tsx';
import { factsSide, slipWindow } from './slipWindow.ts';
import { Talk } from './Talk.tsx';
import { UnderOther } from './UnderOther.tsx';
import { openBeside } from './phone/goingRound.ts';
import { useSwipe } from './phone/useSwipe.ts';
import { useSlipFindings } from './useSlipFindings.ts';

/** What hangs under an open measure: its slips, bracketed like instruments in a score, then what is said of the measure itself and its past. The slip in hand shows what of it stands on other lines too. */
export function OpenMeasure({ desk, measure, systems, here: line, drawing }: { desk: Desk; measure: number; systems: EngravingSnapshot['systems']; here: number; drawing: EngravedSystem }): ReactNode {
  const { slips, slip: focus } = slipsHere(desk);
  const { geometry } = drawing;
  const reach = useMemo(() => slipWindow(geometry, measure, slips), [geometry, measure, slips]);
  const side = factsSide(reach, geometry.width);
  const findings = useSlipFindings(desk, slips.map(({ id }) => id));
  const here = desk.heard.filter((finding) => finding.measure === measure);
  const inHand = selected(desk.caret, desk.walk.ids);
  const hung = useRef<HTMLDivElement>(null);
  const inFocus = focus?.id;
  const first = useRef(inFocus);
  useEffect(() => {
    if (first.current === inFocus) return;
    first.current = inFocus;
    hung.current?.querySelector('.slip-row.chosen')?.scrollIntoView({ block: 'nearest' });
  }, [inFocus]);
  // From slip to slip, and past the last of them to the next open measure.
  const swipe = useSwipe((by) => {
    const next = slips[slips.findIndex(({ id }) => id === inFocus) + by];
    if (next) return desk.move({ type: 'slip', slip: next.id });
    const range = openBeside(desk)[by > 0 ? 'after' : 'before'];
    if (range) openMeasure(desk, range.from);
  });
  const drawn = (slip: (typeof slips)[number], stretch: typeof reach, on = { id: systemName(line), drawing }): ReactNode => (
    <Slip
      id={`${slip.id}-${on.id}`} label={words.slip.label(slipName(desk, slip), slip.proposed.name)} systemId={on.id} drawing={on.drawing} reach={stretch} selected={inHand} chosen={slip.id === inFocus}
      marks={pencilled(slip.marks, slip.seats, desk.inForce, desk.index)} onChoose={() => desk.move({ type: 'slip', slip: slip.id })}
    />
  );
  // Beside the sentences there is room for it; where they stand under the slip, they come first.
  const rest = (slip: (typeof slips)[number]): ReactNode => (slip.id === inFocus ? otherLines(systems, line, slip.from, slip.to) : []).map((other) => (
    <UnderOther key={other.id} desk={desk} reach={reach} width={geometry.width} other={other}>
      {drawn(slip, other.reach, other)}
    </UnderOther>
  ));
  const space = { '--x0': reach.x0, '--x1': reach.x1 };
  return (
    <section className={`open-measure ${side}`} data-open-measure={measure} aria-label={words.measure(measureName(desk, measure))} style={space as CSSProperties}>
      {slips.length ? (
        <div className="slips" ref={hung} {...swipe}>
          {slips.map((slip) => (
              <div key={slip.id} className={slip.id === inFocus ? 'slip-row chosen' : 'slip-row'}>
                <div className="lines">
                  {drawn(slip, reach)}
                  {side === 'below' ? null : rest(slip)}
                </div>
                <SlipFacts desk={desk} slip={slip} name={slipName(desk, slip)} measure={measure} findings={findings[slip.id] ?? []} chosen={slip.id === focus?.id} />
                {side === 'below' ? rest(slip) : null}
              </div>
          ))}
        </div>
      ) : (
        <p className="none">{words.slip.noneOpen}</p>
      )}
      <div className="measure-talk">
        {here.map((finding) => (
          <p key={finding.rule + finding.place} className="watch" data-finding={finding.rule}>
            <SpectaclesInline dark={lensOf(finding.seats)} label={words.slip.watch} /> <b>{findingText(finding, (ordinal) => measureName(desk, ordinal))}</b> {whyText(finding.rule, desk.checker?.why(finding.rule))}{' '}
            <PlaceLink to={{ at: 'rules', rule: finding.rule }}>{words.rules.why}</PlaceLink>{' '}
            {desk.view.roles.some((role) => role !== 'player') ? (
              <button type="button" onClick={() => desk.setLine({ kind: 'mute', rule: finding.rule, place: finding.place, fingerprint: finding.fingerprint })}>
                {words.slip.rest}
              </button>
            ) : null}
          </p>
        ))}
        <Talk desk={desk} measure={measure} proposal={null} />
        {desk.past === measure ? (
          <PastView key={measure} desk={desk} measure={measure} />
        ) : (
          <button type="button" className="show-past" onClick={() => desk.setPast(measure)}>
            {words.past.show} <kbd aria-hidden="true">q</kbd>
          </button>
        )}
        <Past desk={desk} measure={measure} />
        <Misprint key={`misprint ${measure}`} desk={desk} measure={measure} />
      </div>
    </section>
  );
}
