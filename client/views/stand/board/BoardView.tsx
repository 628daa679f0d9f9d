import { useMemo, type ReactNode } from 'react';
import type { HandMoment } from '../../../../core/fingering/explain/handPath.ts';
import { instrumentNamed } from '../../../../core/instruments/instrumentNamed.ts';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import { usePointed } from '../pointed.ts';
import { BoardPicture } from './BoardPicture.tsx';
import { boardSentence } from './boardSentence.ts';
import { boardShapes } from './boardShapes.ts';

/** The fingerboard under the note that is pointed at, or else in hand, as one fingering has it; the same in a sentence. */
export function BoardView({ desk, path, name }: { desk: Desk; path: readonly HandMoment[]; name: string }): ReactNode {
  const pointed = usePointed();
  const { instrument } = desk.view.part;
  const moment = path.find(({ note }) => note === pointed) ?? path.find(({ note }) => note === desk.caret.at);
  const shapes = useMemo(() => (instrument && moment ? boardShapes(instrumentNamed(instrument), moment) : null), [instrument, moment]);
  if (!shapes || !moment) return <p className="none">{words.board.none}</p>;
  const said = boardSentence(shapes, moment);
  return (
    <figure className="on-board" data-on-board={moment.note}>
      <BoardPicture shapes={shapes} position={shapes.thumb ? words.board.thumb : words.offers.position(moment.position)} label={`${words.board.title(name)}. ${said}`} />
      <figcaption>
        <b>{name}.</b> {said}
      </figcaption>
    </figure>
  );
}
