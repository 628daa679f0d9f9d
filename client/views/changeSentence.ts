import type { LateChange } from '../../core/agreement/sinceHandedOut.ts';
import { markWords, seatWords } from '../../core/music/markWords.ts';
import type { MarkValue } from '../../core/music/mark.ts';
import { words } from '../words/words.ts';

const said = (values: readonly MarkValue[]): string => values.map((value) => markWords(value, undefined, words.marks)).join(', ');

/** One change since the parts went out, in words: which note of its measure (0: one that is not shown), what instead of what, and for whom where it is not everybody. */
export function changeSentence({ position, gone, fresh, seats }: Pick<LateChange, 'gone' | 'fresh' | 'seats'> & { position: number }): string {
  const note = position > 0 ? `${words.season.nth(position)}: ` : '';
  const what = note + words.season.instead(said(fresh), said(gone));
  return seats === 'all' ? what : `${what} (${seatWords(seats, words.marks)})`;
}
