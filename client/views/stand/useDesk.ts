import { useCallback, useEffect, useMemo, useReducer, useState } from 'react';
import { CheckSettings } from '../../../core/check/settings.ts';
import { seatsOf } from '../../../core/agreement/seating.ts';
import { factsOf } from '../../../core/agreement/facts.ts';
import { inForce as inForceOf } from '../../../core/agreement/inForce.ts';
import type { Proposal } from '../../../core/agreement/state.ts';
import { heard } from '../../../core/agreement/heard.ts';
import { useChecker, useFindings } from '../../checking/useFindings.ts';
import { useHand } from '../../library/hand.ts';
import { languageNow } from '../../words/language.ts';
import { useOffers } from '../../fingering/useOffers.ts';
import { indexPart } from '../../library/partIndex.ts';
import { useOtherParts } from '../../library/useOtherParts.ts';
import type { OpenedPart } from '../../library/usePartSession.ts';
import type { Place } from '../../router.ts';
import { caretReducer } from '../../tools/caret/reducer.ts';
import { caretAsLeft, keepLeft, pencilAsLeft, readLeft } from '../../tools/leftStore.ts';
import type { LineState } from '../../tools/line/line.ts';
import { keepAlone, readAlone } from '../../tools/pencil/aloneStore.ts';
import { takeCarried } from '../../tools/pencil/carried.ts';
import { pencilReducer } from '../../tools/pencil/reducer.ts';
import type { Run } from '../../tools/run/run.ts';
import { useAfterPaint } from '../../ui/useAfterPaint.ts';
import { pencilsOf, type Desk } from './desk.ts';
import { useBeside } from './beside/useBeside.ts';
import { useElsewhere } from './elsewhere/useElsewhere.ts';
import { useHair } from './hair/useHair.ts';
import { useHearing } from './hearing/useHearing.ts';
import { useNotice } from './waiting/useNotice.ts';
import { useSinceOut } from './waiting/useSinceOut.ts';
import { useWaits } from './waiting/useWaits.ts';
import { withDraft } from './standing.ts';

/** Puts the part, the agreement, the pencil and the checker together on one stand. `measure`, `open`: where the address points, and whether the measure stands open there. */
export function useDesk({ me, view, session, snapshot }: OpenedPart, { measure, open }: Pick<Extract<Place, { at: 'stand' }>, 'measure' | 'open'>): Desk {
  const index = useMemo(() => indexPart(view.part), [view.part]);
  const seats = useMemo(() => seatsOf(view.section), [view.section]);
  const facts = useMemo(() => factsOf(view.part, seats), [view.part, seats]);
  const walk = useMemo(() => ({ ids: index.walk, measureOf: (id: string) => facts.notes.get(id) ?? 0 }), [index, facts]);
  const measureOf = (id: string) => facts.notes.get(id);
  const [caret, move] = useReducer(caretReducer, null, () => caretAsLeft(readLeft(me.id, view.id), measure, (named) => index.first.get(named) ?? index.walk[0] ?? null, measureOf, seats, open));
  const [pencil, write] = useReducer(pencilReducer, null, () => pencilAsLeft(readLeft(me.id, view.id), readAlone(me.id, view.id), measureOf, pencilsOf({ view })));
  const [line, setLine] = useState<LineState | null>(null);
  const [message, setMessage] = useState<string | null>(null);
  const [history, setHistory] = useState(false);
  const [past, setPast] = useState<number | null>(null);
  const [keys, setKeys] = useState(false);
  const [run, setRun] = useState<Run>([]);
  const elsewhere = useElsewhere();
  const quiet = useCallback(() => setMessage(null), []);
  const waits = useWaits(me, view, snapshot);
  const notice = useNotice(me, view, snapshot, quiet);
  const [revising, setRevising] = useState<Proposal | null>(null);

  const { state } = snapshot;
  const draftSeats = useMemo(() => (caret.seat === 'all' ? ('all' as const) : [caret.seat]), [caret.seat]);
  const sinceOut = useSinceOut(view, state, facts, snapshot.caughtUp, setMessage);
  const standing = useMemo(() => inForceOf(state, seats), [state, seats]);
  const inForce = useMemo(() => (pencil.draft.length ? withDraft(state, pencil.draft, draftSeats, facts) : standing), [state, standing, pencil.draft, draftSeats, facts]);
  const checker = useChecker(view.part);
  const others = useOtherParts(view);
  const settings = view.section?.settings;
  const input = useMemo(() => ({ seats, marks: inForce, settings: settings ?? {} }), [seats, inForce, settings]);
  const { findings, stopped } = useFindings(checker, input, others.value);
  const hand = useHand();
  const rest = useMemo(() => {
    const { openStrings, assumedTempo } = CheckSettings.parse(settings ?? {});
    return { pencilled: pencil.draft, standing, openStrings, assumedTempo, hand, players: Math.max(1, seats.length), language: languageNow() };
  }, [settings, pencil.draft, standing, seats, hand]);
  const offers = useOffers(view.part, rest);
  const bowed = useMemo(() => ({ ...input, seat: caret.seat }), [input, caret.seat]);
  const hearing = useHearing(view.part, bowed, offers.found, setMessage);
  const beside = useBeside(view.part, others);
  const bow = useHair(view.part, bowed, beside.on);
  const audible = useMemo(() => heard(findings, state.mutes), [findings, state.mutes]);

  useEffect(() => {
    const carried = takeCarried(view.id);
    if (!carried) return;
    write({ type: 'take', marks: carried.marks });
    setMessage(carried.sentence);
  }, [view.id]);
  useAfterPaint(useCallback(() => keepAlone(me.id, view.id, pencil.alone), [me.id, view.id, pencil.alone]));
  useAfterPaint(useCallback(() => keepLeft(me.id, view.id, caret, pencil), [me.id, view.id, caret, pencil]));
  const looking = caret.at === null ? null : (facts.notes.get(caret.at) ?? null);
  const online = snapshot.status === 'live';
  useEffect(() => session.look(looking), [session, looking, online]);
  useEffect(() => () => session.look(null), [session]);

  return {
    me, view, session, snapshot, state, facts, index, seats, walk, caret, move, pencil, write, line, setLine, say: setMessage, message, standing, inForce,
    offers, hair: bow, beside, hearing, checker, found: findings, heard: audible, stopped, history, setHistory, past, setPast, keys, setKeys, elsewhere, waits, sinceOut, notice, run, setRun, revising, setRevising,
  };
}
