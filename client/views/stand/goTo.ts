import { findMeasure } from '../../library/partIndex.ts';
import { words } from '../../words/words.ts';
import type { Desk } from './desk.ts';

/** Puts the caret where a printed number or a rehearsal letter says, or says that there is no such measure. */
export function goTo(desk: Desk, said: string): void {
  const measure = findMeasure(desk.index, said);
  const first = measure === null ? undefined : desk.index.part.measures.slice(measure - 1).find(({ ordinal }) => desk.index.first.has(ordinal));
  if (first) desk.move({ type: 'put', at: desk.index.first.get(first.ordinal)! });
  else desk.say(words.stand.measureGone(said));
}
