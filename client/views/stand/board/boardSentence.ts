import type { HandMoment } from '../../../../core/fingering/explain/handPath.ts';
import { words } from '../../../words/words.ts';
import type { BoardShapes } from './boardShapes.ts';

/** The same as the picture of the board, for who does not see it. */
export function boardSentence(shapes: BoardShapes, { finger, position, stopped }: HandMoment): string {
  const { frame, strings, string, thumb, reach } = shapes;
  const on = words.board.string(strings[string - 1]!.name);
  const where = thumb ? words.board.thumb : words.board.hand.position(position);
  const [low, high] = [Math.round(frame.low), Math.round(frame.high)];
  if (stopped === null) return words.board.open(on, where, low, high);
  const lead = words.board.stopped(on, words.board.hand.finger(finger), Math.round(stopped), where, low, high);
  return reach ? `${lead} ${words.board.reach(Math.round(reach.mm))}` : lead;
}
