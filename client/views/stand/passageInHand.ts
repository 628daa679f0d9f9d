import { selected } from '../../tools/caret/reducer.ts';
import type { Desk } from './desk.ts';

export interface PassageInHand {
  /** In the order they are played. */
  notes: readonly string[];
  /** One note is in hand, and all of its measure is meant. */
  whole: boolean;
  /** Ordinal of the first note's measure. */
  measure: number;
}

/** The notes in hand, or all of the measure where one note is; null where none is. */
export function passageInHand({ caret, walk, facts }: Pick<Desk, 'caret' | 'walk' | 'facts'>): PassageInHand | null {
  const inHand = selected(caret, walk.ids);
  const measureOf = (note: string | undefined) => (note === undefined ? undefined : facts.notes.get(note));
  const measure = measureOf(inHand[0]);
  if (measure === undefined) return null;
  const whole = inHand.length === 1;
  return { notes: whole ? walk.ids.filter((id) => measureOf(id) === measure) : inHand, whole, measure };
}
