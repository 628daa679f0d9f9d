import { useEffect, useMemo, useReducer, useRef, type ReactNode } from 'react';
import type { CarriedMark } from '../../../core/agreement/carried.ts';
import type { CarriedView, PartView } from '../../../core/agreement/wire/http.ts';
import { excludes } from '../../../core/music/mark.ts';
import { marksInForce, putOn, rubOut, settle } from '../../library/carried.ts';
import { indexPart } from '../../library/partIndex.ts';
import { go, type Place } from '../../router.ts';
import { carrying } from '../../tools/carried/reducer.ts';
import { Head } from '../../ui/Head.tsx';
import { Ledge } from '../../ui/Ledge.tsx';
import { usePlaceKeys } from '../../ui/usePlaceKeys.ts';
import { useSay } from '../../ui/useSay.ts';
import { words } from '../../words/words.ts';
import { inked, pencilled } from '../stand/shownMarks.ts';
import { namesOf, olderMeasures } from './names.ts';
import { PlaceRow, type Doing } from './PlaceRow.tsx';
import { useTwoEngravings } from './useTwoEngravings.ts';

interface Props {
  place: Extract<Place, { at: 'changed' }>;
  view: PartView;
  carried: CarriedView;
  texts: { before: string; after: string } | null;
  again(): void;
}

/** Both editions of a part place by place, and the marks that did not go along, one of them in hand. */
export function Changed({ place, view, carried, texts, again }: Props): ReactNode {
  const { places, settled, revision } = carried;
  const index = useMemo(() => indexPart(view.part), [view.part]);
  const names = useMemo(() => ({ before: namesOf(olderMeasures(places)), after: namesOf(view.part.measures) }), [places, view.part]);
  const marks = useMemo(() => places.flatMap((one) => one.marks), [places]);
  const open = useMemo(() => marks.filter(({ key }) => !settled[key]), [marks, settled]);
  const [{ key, note }, send] = useReducer(carrying, { key: open[0]?.key ?? null, note: open[0]?.maybe?.note ?? null });
  const inHand = marks.find((mark) => mark.key === key) ?? null;
  const engravings = useTwoEngravings(places, texts);
  const { said, say, attempt } = useSay();
  const page = useRef<HTMLElement>(null);
  useEffect(() => page.current?.querySelector('.lost .here')?.scrollIntoView({ block: 'nearest' }), [key]);

  const mayPut = view.roles.includes('principal') || view.roles.includes('player');
  const maySettle = view.roles.includes('principal') || view.roles.includes('librarian');
  const onwards = (mark: CarriedMark) => {
    const at = open.indexOf(mark);
    send({ type: 'take', mark: open[at + 1] ?? open[at - 1] ?? null });
    again();
  };
  const put = (mark: CarriedMark) =>
    attempt(async () => {
      if (!note) return words.changed.noPlace;
      const isThere = mark.why === 'slur' && mark.maybe?.note === note;
      const isInked = isThere ? mark.isInk : await putOn(view, mark, note, names.after.found(note)!.measure.ordinal);
      if (maySettle) await settle(view.id, revision, mark.key, 'put');
      onwards(mark);
      return isInked ? words.changed.isPut : words.changed.isProposed;
    });
  const putSame = (same: readonly CarriedMark[]) =>
    attempt(async () => {
      for (const mark of same) {
        await putOn(view, mark, mark.maybe!.note, mark.maybe!.measure);
        if (maySettle) await settle(view.id, revision, mark.key, 'put');
      }
      send({ type: 'take', mark: open.find((mark) => !same.includes(mark)) ?? null });
      again();
      return words.changed.samePut(same.length);
    });
  const leave = (mark: CarriedMark) =>
    attempt(async () => {
      if (mark.why === 'slur' && mark.isInk) {
        if (!mayPut) return words.changed.reader;
        await rubOut(view, mark);
      }
      await settle(view.id, revision, mark.key, 'leftOut');
      onwards(mark);
      return words.changed.isLeft;
    });
  const reopen = (mark: CarriedMark) =>
    attempt(async () => {
      await settle(view.id, revision, mark.key, null);
      send({ type: 'take', mark });
      again();
      return words.changed.isOpen;
    });
  const doing: Doing = {
    take: (mark) => (say(null), send({ type: 'take', mark })),
    point: (to) => (say(null), send({ type: 'point', note: to })),
    put: mayPut ? (mark) => void put(mark) : null,
    leave: maySettle ? (mark) => void leave(mark) : null,
    putSame: mayPut ? (same) => void putSame(same) : null,
    again: maySettle ? (mark) => void reopen(mark) : null,
  };

  const isOpen = inHand !== null && !settled[inHand.key];
  const around = places.find((one) => one.marks.some((mark) => mark.key === key))?.after ?? null;
  const walk = () => around?.measures.flatMap(({ notes }) => notes.filter(({ id }) => index.notes.has(id)).map(({ id }) => id)) ?? [];
  const step = (by: 1 | -1) => (say(null), send({ type: 'step', by, walk: walk() }));
  const next = (by: 1 | -1) => (say(null), send({ type: 'next', by, marks }));
  const keys = {
    ArrowUp: () => next(-1),
    ArrowDown: () => next(1),
    ArrowLeft: () => step(-1),
    ArrowRight: () => step(1),
    Escape: () => go({ at: 'stand', part: view.id, measure: around?.from ?? null }),
    ...(isOpen ? { Enter: () => (mayPut ? void put(inHand) : say(words.changed.reader)), Backspace: () => (maySettle ? void leave(inHand) : say(words.changed.keeper)) } : {}),
  };
  usePlaceKeys(keys);

  const standing = useMemo(() => inked(marksInForce(view), 'all', index), [view, index]);
  const trial = isOpen && note ? pencilled([{ note, value: inHand.mark.value }], inHand.seats, [], index) : [];
  const shown = trial.length ? [...standing.filter((mark) => mark.note !== note || !excludes(mark.value, inHand!.mark.value)), ...trial] : standing;
  const where = note ? names.after.found(note)?.measure.ordinal : undefined;
  const sentence = open.length ? words.changed.left(open.length) : marks.length === 0 && places.length === 0 ? words.changed.same : words.changed.all(places.length);
  const sub = isOpen ? (note && where ? words.changed.onto(names.after.note(note), words.inMeasures(names.after.measure(where), names.after.measure(where))) : words.changed.noPlace) : null;
  return (
    <>
      <main className="pages changed" ref={page} tabIndex={-1}>
        <Head left={words.changed.title(view.part.name)} middle={view.work.title} right={words.changed.from(carried.fileName)} />
        {places.map((one, i) => (
          <PlaceRow key={i} place={one} names={names} settled={settled} engravings={engravings} standing={shown} inHand={inHand} note={isOpen ? note : null} doing={doing} />
        ))}
        {carried.earlier.length > 1 ? (
          <nav className="other-editions" aria-label={words.changed.others}>
            {carried.earlier.map((one) => (
              <button key={one.revision} type="button" aria-current={one.revision === revision} onClick={() => go({ at: 'changed', part: view.id, revision: one.revision })}>
                {words.changed.from(one.fileName)}
              </button>
            ))}
          </nav>
        ) : null}
      </main>
      <Ledge here={place} sentence={<b>{said ?? sentence}</b>} sub={said ? null : <>{sub} {isOpen ? <span className="by-key">{words.changed.keys}</span> : null}</>} />
    </>
  );
}
