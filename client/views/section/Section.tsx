import { useMemo, useState, type ReactNode } from 'react';
import { inForce } from '../../../core/agreement/inForce.ts';
import type { SectionView } from '../../../core/agreement/wire/http.ts';
import { seatWords } from '../../../core/music/markWords.ts';
import { deskOf } from '../../../core/music/seat.ts';
import { heard } from '../../checking/heard.ts';
import { useChecker, useFindings } from '../../checking/useFindings.ts';
import { passageOf } from '../../engraving/passage.ts';
import { sizesFor } from '../../engraving/sizes.ts';
import { useEngraving } from '../../engraving/useEngraving.ts';
import { indexPart, numberOf } from '../../library/partIndex.ts';
import { useFolderOf } from '../../library/useFolderOf.ts';
import type { OpenedPart } from '../../library/usePartSession.ts';
import { go, type Place } from '../../router.ts';
import { Head } from '../../ui/Head.tsx';
import { Ledge } from '../../ui/Ledge.tsx';
import { LedgeWord } from '../../ui/ledgeParts.tsx';
import { useSay } from '../../ui/useSay.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { words } from '../../words/words.ts';
import { EmptyStaff } from '../stand/EmptyStaff.tsx';
import { Glyphs } from '../stand/Glyphs.tsx';
import { ChangesTable } from './ChangesTable.tsx';
import { findingPlaces } from './findingPlaces.ts';
import { changesOf } from './lanes.ts';
import { Legend } from './Legend.tsx';
import { PassageView } from './PassageView.tsx';
import { passageSentence } from './passageSentence.ts';
import { SectionFindings } from './SectionFindings.tsx';
import { SeatList } from './SeatList.tsx';
import { SettledForm } from './SettledForm.tsx';
import { useChangeKeys } from './useChangeKeys.ts';
import { usePicture } from './usePicture.ts';

/** The desks against time, passage by passage, for the part shown. */
export function Section({ opened, section, text, place, again }: { opened: OpenedPart; section: SectionView; text: string | null; again(): void; place: Extract<Place, { at: 'section' }> }): ReactNode {
  const { view, snapshot } = opened;
  useFolderOf(view.work.id);
  const seats = useMemo(() => section.seats.map(({ seat }) => seat), [section]);
  const index = useMemo(() => indexPart(view.part), [view.part]);
  const input = useMemo(() => ({ seats, marks: inForce(snapshot.state, seats), settings: section.settings }), [seats, snapshot.state, section.settings]);
  const checker = useChecker(view.part);
  const { findings } = useFindings(checker, input);
  const passages = usePicture(checker, input);
  const { said, attempt } = useSay();
  const [which, setWhich] = useState(0);
  const [here, setHere] = useState<{ second: number; desk: number } | null>(null);
  const passage = passages?.[Math.min(which, passages.length - 1)];
  const size = useWindowSize();
  const { kind, music } = sizesFor(size.width, size.height);
  const margin = kind === 'phone' ? 14 : 20;
  const width = kind === 'laptop' ? music - margin - 38 : music - margin;
  const line = useMemo(() => (text && passage ? passageOf(text, passage.from, passage.to) : null), [text, passage]);
  const { engraved } = useEngraving(line, width, 0.2, true);
  const drawing = engraved.systems[0]?.drawing ?? null;

  const near = useMemo(() => (passage ? heard(findings, snapshot.state.mutes).filter(({ measure, rule }) => measure >= passage.from && measure <= passage.to && /^(desk|section)\//.test(rule)) : []), [findings, snapshot.state.mutes, passage]);
  const places = useMemo(() => (passage ? findingPlaces(near, passage) : []), [near, passage]);
  const changes = useMemo(() => (passage ? changesOf(passage) : []), [passage]);
  const change = here ? changes.reduce<(typeof changes)[number] | undefined>((best, one) => (deskOf(one.seat) === here.desk && (!best || Math.abs(one.second - here.second) < Math.abs(best.second - here.second)) ? one : best), undefined) : undefined;
  const name = (ordinal: number) => numberOf(index.part.measures[ordinal - 1]!);
  const toStand = () => go({ at: 'stand', part: view.id, measure: change?.bow.begins.measure ?? passage?.from ?? null });
  useChangeKeys(changes, here, setHere, toStand);
  const where = passage ? words.inMeasures(name(passage.from), name(passage.to)) : '';
  const chosen = here ? places.find(({ desk, second }) => desk === here.desk && Math.abs(second - here.second) < 0.01) : undefined;
  return (
    <>
      <Glyphs glyphs={engraved.glyphs} />
      <main className="pages section-place">
        <Head left={view.part.name} middle={passage ? words.section.staggered(view.work.title, where) : view.work.title} right={words.section.size(Math.ceil(seats.length / 2), seats.length)} />
        {passage ? (
          <div className="desks">
            <div>
              {drawing ? (
              <PassageView passage={passage} drawing={drawing} section={section} index={index} places={places} here={here} margin={margin} label={words.section.label(seats.length, where, near.length)} onHere={setHere} />
            ) : (
              <EmptyStaff width={width} />
            )}
              <ChangesTable passage={passage} section={section} index={index} />
            </div>
            <aside className="side">
              <Legend />
              <SectionFindings
                part={view.id} findings={near} chosen={chosen ? chosen.finding.rule + chosen.finding.place : null} why={(rule) => checker?.why(rule) ?? ''}
                onChoose={(finding) => {
                  const found = places.find((one) => one.finding === finding);
                  if (found) setHere(found);
                }}
              />
              <p className="words">
                <b>{words.section.inWords}</b> {passageSentence(passage)}
              </p>
            </aside>
          </div>
        ) : passages ? (
          <SeatList section={section} />
        ) : null}
        <SettledForm section={section} mayChange={view.roles.some((role) => role !== 'player')} attempt={attempt} again={again} />
      </main>
      <Ledge
        here={place}
        sentence={<b>{said ?? (!passages ? words.partComes : !passage ? words.section.none : change ? words.section.change(seatWords([change.seat]), words.inMeasures(name(change.bow.begins.measure), name(change.bow.begins.measure)), change.bow.direction === 'down' ? words.section.toFrog : words.section.toPoint) : words.section.staggered(view.work.title, where))}</b>}
        sub={passage ? words.section.sub : passages ? words.section.noneSub : null}
        tools={
          <div className="word-row">
            {passages && passages.length > 1 ? <LedgeWord word={words.section.next} cap="n" onPress={() => setWhich((which + 1) % passages.length)} /> : null}
            <LedgeWord word={words.section.onStand} cap="Enter" onPress={toStand} />
          </div>
        }
      />
    </>
  );
}
