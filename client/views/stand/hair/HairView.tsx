import { useMemo, type ReactNode } from 'react';
import type { HairAnswer } from '../../../bowing/messages.ts';
import { secondsOf, timeAxis } from '../../../drawing/playedTime.ts';
import type { EngravedSystem, Geometry } from '../../../../core/engraving/geometry.ts';
import type { PartIndex } from '../../../library/partIndex.ts';
import { selected } from '../../../tools/caret/reducer.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import { pointing, usePointed } from '../pointed.ts';
import { measureName } from '../sentence.ts';
import { HairPicture } from './HairPicture.tsx';
import { hairSentences } from './hairSentences.ts';
import { hairShapes, type DrawnBow } from './hairShapes.ts';

function shapesIn(index: PartIndex, geometry: Geometry, answer: HairAnswer): DrawnBow[] {
  const begins = (ordinal: number) => answer.barlines.find((one) => one.ordinal === ordinal)?.second ?? answer.end;
  const line = { from: begins(geometry.measures[0]!.ordinal), to: begins(geometry.measures.at(-1)!.ordinal + 1), x: timeAxis(answer, geometry, index), at: secondsOf(answer, index) };
  return answer.voices.flatMap((voice) => hairShapes(voice, answer.hair, line));
}

/** A bow's row: it lights its first note on the staff and in the pictures, and is lit by any of its notes. */
function BowRow({ desk, bow }: { desk: Desk; bow: DrawnBow['bow'] }): ReactNode {
  const pointed = usePointed();
  const lit = bow.notes.includes(desk.caret.at ?? '') || (pointed !== null && bow.notes.includes(pointed));
  return (
    <tr className={lit ? 'lit' : undefined} {...pointing(bow.notes[0]!)}>
      <th scope="row">{measureName(desk, bow.measure)}</th>
      <td>{words.signs[bow.direction]}</td>
      <td>{words.hair.way(Math.round(bow.from), Math.round(bow.to))}</td>
      <td>{words.hair.paces[bow.pace]}</td>
      <td>{bow.reason}</td>
    </tr>
  );
}

function Told({ desk, bows, answer }: { desk: Desk; bows: readonly DrawnBow[]; answer: HairAnswer }): ReactNode {
  const name = (ordinal: number) => measureName(desk, ordinal);
  const told = answer.voices.map((voice) => hairSentences(bows.map(({ bow }) => bow).filter((bow) => voice.includes(bow)), voice, name));
  return (
    <div className="told">
      <p>
        <b>{words.section.inWords}</b> {told[0]?.lead}
      </p>
      {told.flatMap(({ shared }) => shared).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {told.flatMap(({ short }) => short).map((sentence) => (
        <p key={sentence} className="watch">
          {sentence}
        </p>
      ))}
      <Fold word={words.hair.table}>
        <table>
          <thead>
            <tr>
              {words.hair.columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {bows.map(({ bow }, i) => (
              <BowRow key={i} desk={desk} bow={bow} />
            ))}
          </tbody>
        </table>
      </Fold>
    </div>
  );
}

/** The bow along its hair under the line of music the hand is on, and the same in words. */
export function HairView({ desk, drawing }: { desk: Desk; drawing: EngravedSystem }): ReactNode {
  const { answer, state } = desk.hair;
  const { geometry } = drawing;
  const bows = useMemo(() => (answer ? shapesIn(desk.index, geometry, answer) : []), [desk.index, geometry, answer]);
  const columns = selected(desk.caret, desk.walk.ids).flatMap((note) => geometry.notes[note]?.x ?? []);
  const [from, to] = [geometry.measures[0]!, geometry.measures.at(-1)!].map(({ ordinal }) => measureName(desk, ordinal));
  const title = words.hair.title(words.inMeasures(from!, to!));
  return (
    <section className="along-hair" aria-label={title}>
      {answer ? <HairPicture bows={bows} hair={answer.hair} geometry={geometry} columns={columns} label={title} onNote={(at) => desk.move({ type: 'put', at })} /> : null}
      <div role="status">
        {state === 'working' ? <p className="none">{words.hair.working}</p> : null}
        {state === 'failed' ? <p className="watch">{words.hair.failed}</p> : null}
      </div>
      {answer ? <Told desk={desk} bows={bows} answer={answer} /> : null}
      <button type="button" onClick={desk.hair.turn}>
        {words.hair.off} <kbd aria-hidden="true">e</kbd>
      </button>
    </section>
  );
}
