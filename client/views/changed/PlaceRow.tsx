import type { ReactNode } from 'react';
import type { CarriedMark, CarriedPlace } from '../../../core/agreement/carried.ts';
import type { Settled } from '../../../core/agreement/wire/http.ts';
import type { ShownMark } from '../../../core/engraving/marks/placeMarks.ts';
import { words } from '../../words/words.ts';
import { EditionLines } from './EditionLines.tsx';
import { LostMarkLine } from './LostMarkLine.tsx';
import { type Names, shownOld } from './names.ts';
import type { Engraved } from './useTwoEngravings.ts';

export interface Doing {
  take(mark: CarriedMark): void;
  point(note: string): void;
  put: ((mark: CarriedMark) => void) | null;
  leave: ((mark: CarriedMark) => void) | null;
  /** All of these on the notes they stood on. */
  putSame: ((marks: readonly CarriedMark[]) => void) | null;
  again: ((mark: CarriedMark) => void) | null;
}

interface Props {
  place: CarriedPlace;
  names: { before: Names; after: Names };
  settled: Readonly<Record<string, Settled>>;
  engravings: { before: Engraved; after: Engraved; width: number };
  standing: readonly ShownMark[];
  inHand: CarriedMark | null;
  note: string | null;
  doing: Doing;
}

/** A place that changed: both editions beside each other, and below them the marks that did not go along. */
export function PlaceRow({ place, names, settled, engravings, standing, inHand, note, doing }: Props): ReactNode {
  const range = (side: 'before' | 'after') => {
    const measures = place[side];
    return measures && words.inMeasures(names[side].measure(measures.from), names[side].measure(measures.to));
  };
  const isHere = inHand !== null && place.marks.some(({ key }) => key === inHand.key);
  const { before, after, width } = engravings;
  const same = place.marks.filter(({ key, why }) => why === 'beside' && !settled[key]);
  return (
    <section className={isHere ? 'place here' : 'place'}>
      <h2>{words.changed.where(range('before'), range('after'))}</h2>
      <div className="editions">
        <EditionLines title={words.changed.old} range={place.before} {...before} width={width} name={names.before.measure} marks={place.marks.flatMap((mark) => shownOld(mark, names.before))} note={isHere ? inHand.mark.note : null} />
        <EditionLines title={words.changed.now} range={place.after} {...after} width={width} name={names.after.measure} marks={standing} note={note} onPoint={doing.point} />
      </div>
      {place.marks.length ? (
        <ul className="lost">
          {place.marks.map((mark) => (
            <LostMarkLine
              key={mark.key} mark={mark} note={names.before.note(mark.mark.note)} where={words.inMeasures(names.before.measure(mark.measure), names.before.measure(mark.measure))} settled={settled[mark.key]} isHere={inHand?.key === mark.key}
              onTake={() => doing.take(mark)} onPut={inHand?.key === mark.key && note && doing.put ? () => doing.put!(mark) : null} onLeave={doing.leave && (() => doing.leave!(mark))} onAgain={doing.again && (() => doing.again!(mark))}
            />
          ))}
        </ul>
      ) : null}
      {same.length > 1 && doing.putSame ? (
        <button type="button" className="put-same" onClick={() => doing.putSame!(same)}>
          {words.changed.putSame(same.length)}
        </button>
      ) : null}
      {place.comments.length ? <p>{words.changed.said(place.comments.length)}</p> : null}
      {place.mutes.length ? <p>{words.changed.mutes(place.mutes.length)}</p> : null}
    </section>
  );
}
