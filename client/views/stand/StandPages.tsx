import { useCallback, useEffect, useMemo, useRef, type ReactNode } from 'react';
import { lensOf } from '../../drawing/lensOf.ts';
import type { ShownFinding } from '../../../core/engraving/marks/placeMarks.ts';
import type { EngravingSnapshot } from '../../engraving/engraving.ts';
import { selected } from '../../tools/caret/reducer.ts';
import { words } from '../../words/words.ts';
import { openMeasure } from './commands.ts';
import type { Desk } from './desk.ts';
import { BesideView } from './beside/BesideView.tsx';
import { bySystem } from './bySystem.ts';
import { ElsewhereView } from './elsewhere/ElsewhereView.tsx';
import { HairView } from './hair/HairView.tsx';
import { OffersView } from './offers/OffersView.tsx';
import { hangsUnder } from './offers/take.ts';
import { EmptyStaff } from './EmptyStaff.tsx';
import { OpenMeasure } from './OpenMeasure.tsx';
import { openRanges } from './openMeasures.ts';
import { systemName } from './otherLines.ts';
import { measureName, noteSentence } from './sentence.ts';
import { WaitsView } from './waiting/WaitsView.tsx';
import { SystemView } from './SystemView.tsx';
import { OtherLine } from './underneath/OtherLine.tsx';
import type { Underneath } from './underneath/useUnderneath.ts';
import { unreadHere } from './unread.ts';
import { useShownMarks } from './useShownMarks.ts';
import { usePageTurns } from './view/usePageTurns.ts';

interface Props {
  desk: Desk;
  engraved: EngravingSnapshot;
  width: number;
  /** The lines and pages of the print. */
  paper: boolean;
  underneath: Underneath;
}

/** The part, system after system, with the open measure's slips hanging under its own. */
export function StandPages({ desk, engraved, width, paper, underneath }: Props): ReactNode {
  const latest = useRef(desk);
  useEffect(() => {
    latest.current = desk;
  });
  const { ranges } = engraved;
  const { facts } = desk;
  const marks = useShownMarks(desk, ranges);
  const brackets = useMemo(() => {
    const open = openRanges(desk.state).map(({ from, to, slips }) => ({ from, to, letters: slips.map(({ letter }) => letter).join(' ') }));
    return bySystem(ranges, open, ({ from, to }) => [from, to]);
  }, [desk.state, ranges]);
  const findings = useMemo(() => {
    const shown = desk.heard.flatMap(({ notes, rule, seats }): ShownFinding[] => (notes[0] ? [{ note: notes[0], rule, lens: lensOf(seats) }] : []));
    return bySystem(ranges, shown, ({ note }) => facts.notes.get(note) ?? 0);
  }, [desk.heard, ranges, facts]);
  const unread = bySystem(ranges, unreadHere(desk), (measure) => measure);
  const people = bySystem(ranges, lookers(desk), ({ measure }) => measure);
  const inHand = useMemo(
    () => bySystem(ranges, selected(desk.caret, desk.walk.ids), (note) => facts.notes.get(note) ?? 0),
    [desk.caret, desk.walk.ids, ranges, facts],
  );
  const label = useCallback((note: string) => {
    const now = latest.current;
    return `${words.measure(measureName(now, now.facts.notes.get(note) ?? 0))}, ${noteSentence(now, note)}`;
  }, []);
  const onNote = useCallback((at: string, extend: boolean) => {
    latest.current.say(null);
    latest.current.move({ type: 'put', at, extend });
  }, []);
  const onMeasure = useCallback((measure: number) => {
    if (latest.current.caret.open !== measure) openMeasure(latest.current, measure);
  }, []);
  const { other } = underneath;
  const turns = usePageTurns(paper, desk, engraved);
  const list = useRef<HTMLDivElement>(null);
  const at = desk.caret.at;
  const openAt = desk.caret.open;
  const laid = engraved.systems.length;
  const here = at === null ? null : (desk.facts.notes.get(at) ?? null);
  const hung = hangsUnder(desk);
  const again = desk.elsewhere.found ? desk.facts.notes.get(desk.elsewhere.found.first) : undefined;
  const row = here === null ? -1 : engraved.systems.findIndex(({ first, last }) => first <= here && here <= last);
  // What hangs under the line in hand needs the room below it.
  const hanging = openAt !== null || hung !== null || again !== undefined || desk.waits.on || desk.hair.on || desk.beside.on;
  // A system that is drawn later takes another height than its empty staff: it is brought into view again then.
  const drawn = row >= 0 && engraved.systems[row]!.drawing !== null;
  useEffect(() => {
    const target = list.current?.querySelector(`[data-system="${row}"]`);
    target?.scrollIntoView({ block: hanging ? 'start' : 'nearest' });
  }, [at, hanging, laid, row, drawn]);
  useEffect(() => {
    // As a measure opens with a slip in hand, that slip may hang below the first.
    if (openAt !== null && drawn) list.current?.querySelector('.open-measure:not(.offers) .slip-row.chosen')?.scrollIntoView({ block: 'nearest' });
  }, [openAt, drawn]);

  if (!laid) return <div className="systems">{Array.from({ length: 6 }, (_, i) => <EmptyStaff key={i} width={width} />)}</div>;
  return (
    <div className="systems" ref={list}>
      {engraved.systems.map((system, i) => {
        const { drawing, first, last } = system;
        const opened = desk.caret.open !== null && first <= desk.caret.open && desk.caret.open <= last;
        const page = turns.get(i);
        return (
          <div key={i} className={page ? 'system-row turned' : 'system-row'} data-system={i} data-page={page ? words.view.page(page) : undefined}>
            {drawing ? (
              <SystemView
                id={systemName(i)} drawing={drawing} number={measureName(desk, first)} spoken={[measureName(desk, first), measureName(desk, last)]}
                marks={marks[i]!} findings={findings[i]!} brackets={brackets[i]!} people={people[i]!} unread={unread[i]!}
                selected={inHand[i]!.filter((note) => drawing.geometry.notes[note])} label={label} onNote={onNote} onMeasure={onMeasure}
              />
            ) : (
              <EmptyStaff width={width} />
            )}
            {drawing && other ? <OtherLine name={other.section} drawing={underneath.engraved.systems[i]?.drawing ?? null} marks={underneath.marks[i] ?? NONE} /> : null}
            {drawing && desk.hair.on && i === row ? <HairView desk={desk} drawing={drawing} /> : null}
            {drawing && desk.beside.on && i === row ? <BesideView desk={desk} drawing={drawing} /> : null}
            {desk.waits.on && i === Math.max(row, 0) ? <WaitsView desk={desk} /> : null}
            {drawing && again !== undefined && first <= again && again <= last ? <ElsewhereView desk={desk} /> : null}
            {drawing && hung !== null && first <= hung && hung <= last ? <OffersView desk={desk} systems={engraved.systems} here={i} drawing={drawing} /> : null}
            {opened && drawing ? <OpenMeasure desk={desk} measure={desk.caret.open!} systems={engraved.systems} here={i} drawing={drawing} /> : null}
          </div>
        );
      })}
    </div>
  );
}

const NONE: never[] = [];

function lookers({ snapshot, me }: Desk): { measure: number; names: string }[] {
  const byMeasure = new Map<number, string[]>();
  for (const { id, name, measure } of snapshot.people) {
    if (id === me.id || measure === null) continue;
    const names = byMeasure.get(measure) ?? [];
    if (!names.includes(name)) byMeasure.set(measure, [...names, name]);
  }
  return [...byMeasure].map(([measure, names]) => ({ measure, names: names.join(', ') }));
}
