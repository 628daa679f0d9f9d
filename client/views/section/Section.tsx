import { useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import { seatsOf } from '../../../core/agreement/seating.ts';
import { factsOf } from '../../../core/agreement/facts.ts';
import { inForce } from '../../../core/agreement/inForce.ts';
import type { SectionView } from '../../../core/agreement/wire/http.ts';
import { crowdAllowed } from '../../../core/bowing/stagger/problem.ts';
import { CheckSettings } from '../../../core/check/settings.ts';
import { deskOf } from '../../../core/music/seat.ts';
import { heard } from '../../../core/agreement/heard.ts';
import { useChecker, useFindings } from '../../checking/useFindings.ts';
import { passageOf } from '../../engraving/passage.ts';
import { sizesFor } from '../../engraving/sizes.ts';
import { useEngraving } from '../../engraving/useEngraving.ts';
import { numberOf } from '../../../core/music/printedNumber.ts';
import { indexPart } from '../../library/partIndex.ts';
import { useFolderOf } from '../../library/useFolderOf.ts';
import type { OpenedPart } from '../../library/usePartSession.ts';
import { go, type Passage, type Place } from '../../router.ts';
import { carry } from '../../tools/pencil/carried.ts';
import { Head } from '../../ui/Head.tsx';
import { useSay } from '../../ui/useSay.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { words } from '../../words/words.ts';
import { EmptyStaff } from '../stand/EmptyStaff.tsx';
import { ChangesTable } from './ChangesTable.tsx';
import { findingPlaces } from './findingPlaces.ts';
import { changesOf } from './lanes.ts';
import { PassageView } from './PassageView.tsx';
import { HearPassage } from './HearPassage.tsx';
import { passageBetween, PlanForm } from './PlanForm.tsx';
import { PlanWords } from './PlanWords.tsx';
import { SeatList } from './SeatList.tsx';
import { SectionLedge } from './SectionLedge.tsx';
import { SectionSide } from './SectionSide.tsx';
import { SettledForm } from './SettledForm.tsx';
import { useChangeKeys } from './useChangeKeys.ts';
import { usePicture } from './usePicture.ts';
import { useSectionPlan } from './useSectionPlan.ts';

/** The desks against time, passage by passage, for the part shown: as it stands, or as a plan would have it. */
export function Section({ opened, section, text, place, again }: { opened: OpenedPart; section: SectionView; text: string | null; again(): void; place: Extract<Place, { at: 'section' }> }): ReactNode {
  const { view, snapshot } = opened;
  const { state } = snapshot;
  useFolderOf(view.work.id);
  const seats = useMemo(() => seatsOf(section), [section]);
  const index = useMemo(() => indexPart(view.part), [view.part]);
  const facts = useMemo(() => factsOf(view.part, seats), [view.part, seats]);
  const standing = useMemo(() => ({ seats, marks: inForce(state, seats), settings: section.settings }), [seats, state, section.settings]);
  const plan = useSectionPlan(view.part, place.passage, standing, state, facts);
  const checker = useChecker(view.part);
  const { findings } = useFindings(checker, plan.input);
  const passages = usePicture(checker, plan.input);
  const { said, say, attempt } = useSay();
  const [which, setWhich] = useState(0);
  const [here, setHere] = useState<{ second: number; desk: number } | null>(null);
  const { planned } = plan;
  const passage = planned ? passages?.find(({ from, to }) => from <= planned.to && planned.from <= to) : passages?.[Math.min(which, passages.length - 1)];
  const size = useWindowSize();
  const { kind, music } = sizesFor(size.width, size.height);
  const margin = kind === 'phone' ? 14 : 20;
  const width = kind === 'laptop' ? music - margin - 38 : music - margin;
  const line = useMemo(() => (text && passage ? passageOf(text, passage.from, passage.to) : null), [text, passage]);
  const { engraved } = useEngraving(line, width, 0.2, true);

  const near = useMemo(() => (passage ? heard(findings, state.mutes).filter(({ measure, rule }) => measure >= passage.from && measure <= passage.to && /^(desk|section)\//.test(rule)) : []), [findings, state.mutes, passage]);
  const places = useMemo(() => (passage ? findingPlaces(near, passage) : []), [near, passage]);
  const changes = useMemo(() => (passage ? changesOf(passage) : []), [passage]);
  const change = here ? changes.reduce<(typeof changes)[number] | undefined>((best, one) => (deskOf(one.seat) === here.desk && (!best || Math.abs(one.second - here.second) < Math.abs(best.second - here.second)) ? one : best), undefined) : undefined;
  const name = (ordinal: number) => numberOf(index.part.measures[ordinal - 1]!);
  const where = passage ? words.inMeasures(name(passage.from), name(passage.to)) : '';
  const chosen = here ? places.find(({ desk, second }) => desk === here.desk && Math.abs(second - here.second) < 0.01) : undefined;
  const mayMark = view.roles.includes('principal') || view.roles.includes('player');
  const mayTake = mayMark && Boolean(planned?.marks.length);
  const limit = crowdAllowed(plan.input.seats.length, CheckSettings.parse(section.settings).togetherShare);

  const toHear = passage ? passageBetween(index, passage.from, passage.to) : null;
  const shown = useRef<HTMLElement>(null);
  useEffect(() => {
    if (place.passage) shown.current?.scrollTo({ top: 0 });
  }, [place.passage]);
  const ask = (asked: Passage | null) => go({ at: 'section', part: view.id, passage: asked }, { replace: asked === null });
  const askAgain = () => {
    if (toHear) ask(toHear);
    else say(words.plan.noNotes);
  };
  const toStand = () => go({ at: 'stand', part: view.id, measure: change?.bow.begins.measure ?? passage?.from ?? planned?.from ?? null });
  const take = () => {
    if (!planned?.marks.length) return;
    if (!mayMark) return say(words.stand.onlySection);
    if (state.locked) return say(words.stand.lifted);
    carry({ part: view.id, marks: planned.marks, sentence: words.plan.taken(planned.marks.length) });
    go({ at: 'stand', part: view.id, measure: planned.from });
  };
  const leave = () => ask(null);
  useChangeKeys(changes, here, setHere, { Enter: planned ? take : toStand, p: askAgain, ...(place.passage ? { Escape: leave } : {}) });
  const planWords = <PlanWords plan={plan} name={name} mayTake={mayTake} onTake={take} onLeave={leave} />;
  return (
    <>
      <main className="pages section-place" ref={shown}>
        <Head left={view.part.name} middle={passage ? (planned ? words.plan.planned : words.section.staggered)(view.work.title, where) : view.work.title} right={words.section.size(Math.ceil(seats.length / 2), seats.length)} />
        {passage ? (
          <div className="desks">
            <div>
              {engraved.systems.length === 0 ? <EmptyStaff width={width} /> : null}
              {engraved.systems.map(({ drawing, first, last }) =>
                drawing ? (
                  <PassageView
                    key={first} passage={passage} drawing={drawing} section={section} index={index} places={places} here={here} margin={margin} limit={limit}
                    label={words.section.label(plan.input.seats.length, words.inMeasures(name(first), name(last)), near.filter(({ measure }) => measure >= first && measure <= last).length)} onHere={setHere}
                  />
                ) : (
                  <EmptyStaff key={first} width={width} />
                ),
              )}
              {toHear ? <HearPassage key={`${toHear.first} ${toHear.last}`} part={view.part} notes={toHear} standing={standing} planned={planned ? plan.input : null} say={say} /> : null}
              <ChangesTable passage={passage} section={section} index={index} />
            </div>
            <SectionSide part={view.id} passage={passage} findings={near} places={places} chosen={chosen} checker={checker} name={name} plan={planWords} onHere={setHere} />
          </div>
        ) : (
          <>
            {planWords}
            {passages ? <SeatList section={section} /> : null}
            {passages && view.roles.includes('librarian') ? (
              <p>
                <PlaceLink to={{ at: 'shelf' }}>{words.section.seatsOnShelf}</PlaceLink>
              </p>
            ) : null}
          </>
        )}
        <PlanForm
          section={section} index={index} from={planned?.from ?? passage?.from ?? 1} to={planned?.to ?? passage?.to ?? 1} absent={plan.absent} onAbsent={plan.setAbsent} onPlan={ask}
          say={say}
        />
        <SettledForm section={section} mayChange={view.roles.some((role) => role !== 'player')} attempt={attempt} again={again} />
      </main>
      <SectionLedge
        place={place} work={view.work.title} where={where} said={said} drawn={passages !== null} change={change} measure={name} plan={plan} mayTake={mayTake} more={!planned && (passages?.length ?? 0) > 1}
        onNext={() => setWhich((which + 1) % (passages?.length ?? 1))} onPlan={askAgain} onTake={take} onStand={toStand}
      />
    </>
  );
}
