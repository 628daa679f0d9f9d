import { useMemo, type ReactNode } from 'react';
import type { OtherBows } from '../../../beside/messages.ts';
import type { EngravedSystem } from '../../../../core/engraving/geometry.ts';
import { selected } from '../../../tools/caret/reducer.ts';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import { measureName } from '../sentence.ts';
import { besideSentences } from './besideSentences.ts';
import { bowLane, measureAxis, together, type LaneBow } from './bowLanes.ts';
import { Again } from './Again.tsx';
import { LanePicture } from './LanePicture.tsx';
import { takeBowing } from './takeBowing.ts';

interface Shown {
  desk: Desk;
  drawing: EngravedSystem;
  /** x of the notes in hand. */
  columns: readonly number[];
  /** Notes whose bowing would be taken: the passage in hand, or the line. */
  wanted: readonly string[];
  x(measures: number): number;
}

function Other({ desk, drawing, columns, wanted, x, other, mine }: Shown & { other: OtherBows; mine: readonly LaneBow[] }): ReactNode {
  const { geometry } = drawing;
  const name = (ordinal: number) => measureName(desk, ordinal);
  const bows = useMemo(() => bowLane(other.hair, geometry, x), [other, geometry, x]);
  const model = desk.beside.others.find(({ id }) => id === other.id);
  const pairs = together(mine, bows);
  const sentences = besideSentences(pairs, other, geometry.measures[0]!.ordinal, geometry.measures.at(-1)!.ordinal, name);
  return (
    <article aria-label={other.name} data-beside={other.id}>
      <h4>{other.name}</h4>
      <LanePicture bows={bows} against={pairs.against} geometry={geometry} columns={columns} label={words.beside.lane(other.name, sentences.join(' '))} />
      <p>{sentences.join(' ')}</p>
      {model && other.same.some(({ notes }) => notes.some(([, note]) => wanted.includes(note))) ? (
        <button type="button" onClick={() => takeBowing(desk, model, other.same, wanted, other.name)}>
          {words.beside.take}
        </button>
      ) : null}
    </article>
  );
}

/** How the other sections bow in the line the hand is on, each on this part's notes' own x, under this part's own bows. */
export function BesideView({ desk, drawing }: { desk: Desk; drawing: EngravedSystem }): ReactNode {
  const { beside, hair, index } = desk;
  const { geometry } = drawing;
  const x = useMemo(() => measureAxis(geometry, index), [geometry, index]);
  const mine = useMemo(() => (hair.answer ? bowLane(hair.answer, geometry, x) : []), [hair.answer, geometry, x]);
  const columns = selected(desk.caret, desk.walk.ids).flatMap((note) => geometry.notes[note]?.x ?? []);
  const [from, to] = [geometry.measures[0]!, geometry.measures.at(-1)!].map(({ ordinal }) => measureName(desk, ordinal));
  const title = words.beside.title(words.inMeasures(from!, to!));
  const inHand = selected(desk.caret, desk.walk.ids);
  const wanted = inHand.length > 1 ? inHand : desk.walk.ids.filter((note) => geometry.notes[note]);
  const shown = { desk, drawing, columns, wanted, x };
  return (
    <section className="beside-mine" aria-label={title}>
      <h3>{title}</h3>
      <div role="status">
        {beside.state === 'working' ? <p className="none">{words.beside.working}</p> : null}
        {beside.state === 'failed' ? <p className="watch">{words.beside.failed}</p> : null}
        {beside.trouble ? <p className="watch">{beside.trouble}</p> : null}
        {beside.answer?.sections.length === 0 ? <p className="none">{words.beside.alone}</p> : null}
      </div>
      {beside.answer ? (
        <>
          <article aria-label={words.beside.mine(desk.view.part.name)}>
            <h4>{words.beside.mine(desk.view.part.name)}</h4>
            <LanePicture bows={mine} against={[]} geometry={geometry} columns={columns} label={words.beside.lane(desk.view.part.name, '')} />
          </article>
          {beside.answer.sections.map((other) => (
            <Other key={other.id} {...shown} other={other} mine={mine} />
          ))}
          <Again desk={desk} again={beside.answer.again} wanted={wanted} />
          <p className="legend">{words.beside.legend}</p>
        </>
      ) : null}
      <button type="button" onClick={beside.turn}>
        {words.beside.off} <kbd aria-hidden="true">y</kbd>
      </button>
    </section>
  );
}
