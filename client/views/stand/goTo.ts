import { findMeasure } from '../../library/partIndex.ts';
import { words } from '../../words/words.ts';
import type { Desk } from './desk.ts';

/** Puts the caret on the first note from a measure on, by its ordinal; false where none follows. */
export function goToMeasure({ index, move }: Desk, measure: number): boolean {
  const first = index.part.measures.slice(measure - 1).find(({ ordinal }) => index.first.has(ordinal));
  if (first) move({ type: 'put', at: index.first.get(first.ordinal)! });
  return first !== undefined;
}

/** Puts the caret where a printed number or a rehearsal letter says, or says that there is no such measure. */
export function goTo(desk: Desk, said: string): void {
  const measure = findMeasure(desk.index, said);
  if (measure === null || !goToMeasure(desk, measure)) desk.say(words.stand.measureGone(said));
}
