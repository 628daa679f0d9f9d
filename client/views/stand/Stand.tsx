import { useCallback, useEffect, useMemo, useRef, type CSSProperties, type Dispatch, type ReactNode } from 'react';
import type { EngravingSnapshot, EngravingStore } from '../../engraving/engraving.ts';
import { useFolderOf } from '../../library/useFolderOf.ts';
import type { OpenedPart } from '../../library/usePartSession.ts';
import { addressOf, go, type Place } from '../../router.ts';
import type { Command } from '../../tools/keys.ts';
import type { View, ViewAction } from '../../tools/view/reducer.ts';
import { Head } from '../../ui/Head.tsx';
import { useAfterPaint } from '../../ui/useAfterPaint.ts';
import { words } from '../../words/words.ts';
import { perform } from './commands.ts';
import { Paper } from './paper/Paper.tsx';
import { Sheets } from './paper/Sheets.tsx';
import { usePaper } from './paper/usePaper.ts';
import { StandLedge } from './StandLedge.tsx';
import { StandPages } from './StandPages.tsx';
import { useDesk } from './useDesk.ts';
import { useKeys } from './useKeys.ts';
import { useSeen } from './useSeen.ts';
import { useUnderneath } from './underneath/useUnderneath.ts';
import { usePinch } from './view/usePinch.ts';

/** How the part lies here, and what of it is engraved that way; sizes as in client/engraving/sizes.ts. */
interface Lies {
  sp: number;
  music: number;
  lie: View;
  turn: Dispatch<ViewAction>;
  store: EngravingStore | null;
  engraved: EngravingSnapshot;
}

/** The stand: the part's pages, and the ledge. Nothing else. */
export function Stand({ opened, text, place, lies }: { opened: OpenedPart; text: string | null; place: Extract<Place, { at: 'stand' }>; lies: Lies }): ReactNode {
  const { view, snapshot } = opened;
  const desk = useDesk(opened, place);
  useFolderOf(view.work.id);
  const { sp, music, lie, turn, store, engraved } = lies;
  const pages = useRef<HTMLElement>(null);
  const seen = useSeen(pages, engraved);
  const underneath = useUnderneath(desk, engraved, music);
  const turnUnderneath = useRef(underneath.turn);
  usePinch(pages, useCallback((by: number) => turn({ type: 'pinch', by }), [turn]));
  const paper = usePaper();
  const { lay: layOnPaper, print } = paper;

  const shown = useRef(lie);
  const latest = useRef(desk);
  useEffect(() => {
    latest.current = desk;
    turnUnderneath.current = underneath.turn;
  });
  const onCommand = useCallback((command: Command) => {
    const now = latest.current;
    if (command.do !== 'keys') {
      if (!now.message) now.notice.read();
      now.say(null);
    }
    for (const { operation } of now.snapshot.refusals) now.session.dismiss(operation);
    if (command.do === 'print') {
      now.say(words.anywhere.laying);
      return layOnPaper();
    }
    if (command.do === 'larger' || command.do === 'smaller' || command.do === 'turn') return turn({ type: command.do });
    if (command.do === 'underneath') return turnUnderneath.current();
    perform(now, command);
  }, [layOnPaper, turn]);
  useEffect(() => {
    const { form, zoom } = lie;
    if (shown.current !== lie) latest.current.say(form === 'paper' ? words.view.paper(zoom) : words.view.lines(zoom));
    shown.current = lie;
  }, [lie]);
  const onLaid = useCallback(() => {
    latest.current.say(null);
    print();
  }, [print]);
  useKeys(onCommand, desk.line !== null);

  const here = desk.caret.at === null ? null : (desk.facts.notes.get(desk.caret.at) ?? null);
  useAfterPaint(useCallback(() => {
    // Whoever has gone to another place meanwhile stays there.
    if (here !== null && location.pathname === addressOf({ at: 'stand', part: view.id, measure: null })) go({ at: 'stand', part: view.id, measure: here }, { replace: true });
  }, [here, view.id]));
  const nearest = useMemo(() => engraved.systems.findIndex(({ first, last }) => here !== null && first <= here && here <= last), [engraved.systems, here]);
  useEffect(() => {
    if (nearest >= 0) store?.near(nearest);
  }, [store, nearest]);

  const people = view.section?.seats.filter(({ person }) => person).length ?? 0;
  const present = new Set(snapshot.people.map(({ id }) => id)).size;
  const seat = desk.caret.seat === 'all' ? words.seat.all : words.seat.one(desk.caret.seat);
  return (
    <>
      <main className={lie.form === 'paper' ? 'pages as-printed' : 'pages'} ref={pages} style={{ '--sp': `${sp}px` } as CSSProperties}>
        <Head left={view.part.name} middle={view.work.title} right={[seat, people ? words.here(present, people) : ''].filter(Boolean).join(' · ')} />
        <StandPages desk={desk} engraved={engraved} width={music} paper={lie.form === 'paper'} underneath={underneath} />
      </main>
      <Sheets part={view.part.name} work={view.work.title} />
      {paper.on && text ? <Paper desk={desk} text={text} onLaid={onLaid} /> : null}
      <StandLedge desk={desk} engraved={engraved} seen={seen} place={place} onCommand={onCommand} />
    </>
  );
}
