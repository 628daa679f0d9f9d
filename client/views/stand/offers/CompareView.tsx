import { useEffect, useMemo, useRef, type ReactNode } from 'react';
import type { EngravedSystem } from '../../../../core/engraving/geometry.ts';
import { LETTERS, type Offer, type Pair } from '../../../fingering/messages.ts';
import { selected } from '../../../tools/caret/reducer.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { words } from '../../../words/words.ts';
import { BoardView } from '../board/BoardView.tsx';
import type { Desk } from '../desk.ts';
import type { OtherLine } from '../otherLines.ts';
import { pencilled } from '../shownMarks.ts';
import { Slip } from '../Slip.tsx';
import { UnderOther } from '../UnderOther.tsx';
import { bothMarks, settingsOf } from './compared.ts';
import { HandPicture } from './HandPicture.tsx';
import { StepRow } from './StepRow.tsx';

interface Props {
  desk: Desk;
  systemId: string;
  drawing: EngravedSystem;
  reach: { x0: number; x1: number };
  /** The rest of the passage, where it is not on this line alone. */
  others: readonly OtherLine[];
}

interface Two {
  above: Offer;
  below: Offer;
  pair: Pair;
}

function Told({ above, below, pair }: Two): ReactNode {
  return (
    <>
      <p>
        <b>{words.section.inWords}</b> {pair.sentences.join(' ')} {pair.costs}
      </p>
      <p>{above.totals}</p>
      <p>{below.totals}</p>
      {pair.differs.length ? <p className="none">{words.compare.rule}</p> : null}
    </>
  );
}

function Steps({ desk, above, below, names, pair }: Two & { desk: Desk; names: readonly [string, string] }): ReactNode {
  const texts = new Map(below.steps.map(({ note, text }) => [note, text]));
  return (
    <Fold word={words.offers.steps}>
      <table>
        <thead>
          <tr>
            {[words.compare.note, ...names].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {above.steps.map(({ note, name, text }) => (
            <StepRow key={note} desk={desk} note={note} pitch={pair.differs.includes(note) ? `${name} ≠` : name} texts={[text, texts.get(note) ?? '']} />
          ))}
        </tbody>
      </table>
    </Fold>
  );
}

function Side({ desk, drawing, offer, letter, setting, below }: Pick<Props, 'desk' | 'drawing'> & { offer: Offer; letter: string; setting: ReturnType<typeof settingsOf>[number]; below: boolean }): ReactNode {
  const name = words.offers.label(letter);
  return (
    <div className="side" data-side={below ? 'b' : 'a'}>
      <h4>
        <em>{letter}</em> {words.offers.by[offer.by]}
      </h4>
      <HandPicture path={offer.path} geometry={drawing.geometry} inHand={selected(desk.caret, desk.walk.ids)} label={`${words.offers.picture(name)} ${offer.totals}`} setting={setting} below={below} onNote={(at) => desk.move({ type: 'put', at })} />
    </div>
  );
}

/** Two fingerings about one staff: the hand of one above with its figures, that of the other below, what differs ruled, and the two in words. */
export function CompareView({ desk, systemId, drawing, reach, others }: Props): ReactNode {
  const { found, sides } = desk.offers;
  const [above, below] = [found?.offers[sides?.a ?? -1], found?.offers[sides?.b ?? -1]];
  const pair = sides && found?.pairs.find(({ a, b }) => a === Math.min(sides.a, sides.b) && b === Math.max(sides.a, sides.b));
  const settings = useMemo(() => (above && below && pair ? settingsOf(above, below, pair) : null), [above, below, pair]);
  const marks = useMemo(() => (above && below ? bothMarks((offer, seats) => pencilled(offer.marks, seats, desk.inForce, desk.index), above, below) : []), [above, below, desk.inForce, desk.index]);
  const section = useRef<HTMLElement>(null);
  useEffect(() => {
    // The two lie above the list they were chosen from.
    if (sides) section.current?.scrollIntoView({ block: 'start' });
  }, [sides]);
  if (!sides || !above || !below || !pair || !settings) return null;
  const letters = [LETTERS[sides.a]!, LETTERS[sides.b]!] as const;
  const names = [words.offers.label(letters[0]), words.offers.label(letters[1])] as const;
  const title = words.compare.title(...letters);
  const about = (id: string, on: EngravedSystem, stretch: Props['reach']): ReactNode => (
    <>
      <Side desk={desk} drawing={on} offer={above} letter={letters[0]} setting={settings[0]} below={false} />
      <Slip id={`compared-${id}`} label={words.compare.staff(...letters)} systemId={id} drawing={on} reach={stretch} marks={marks} selected={selected(desk.caret, desk.walk.ids)} chosen={false} strings="own" onChoose={() => {}} />
      <Side desk={desk} drawing={on} offer={below} letter={letters[1]} setting={settings[1]} below />
    </>
  );
  return (
    <section className="compare" aria-label={title} ref={section}>
      <h3>{title}</h3>
      <div className="offer-whole">
        <div className="both">
          {about(systemId, drawing, reach)}
          {others.map((other) => (
            <UnderOther key={other.id} desk={desk} reach={reach} width={drawing.geometry.width} other={other}>
              {about(other.id, other.drawing, other.reach)}
            </UnderOther>
          ))}
        </div>
        <div className="told">
          <Told above={above} below={below} pair={pair} />
          <div className="boards">
            <BoardView desk={desk} path={above.path} name={names[0]} />
            <BoardView desk={desk} path={below.path} name={names[1]} />
          </div>
          <Steps desk={desk} above={above} below={below} names={names} pair={pair} />
          <button type="button" onClick={desk.offers.apart}>
            {words.compare.apart} <kbd aria-hidden="true">Esc</kbd>
          </button>
        </div>
      </div>
    </section>
  );
}
