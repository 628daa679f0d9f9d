import type { Finding } from '../../../core/check/finding.ts';
import type { Desk } from './desk.ts';

/** The measure in hand; 0 where no note is. */
export const hereIn = ({ caret, facts }: Desk): number => (caret.at === null ? 0 : (facts.notes.get(caret.at) ?? 0));

/** The finding the ledge speaks of: on the note in hand, or else in its measure. */
export function findingHere(desk: Desk): Finding | undefined {
  const here = hereIn(desk);
  return desk.heard.find(({ notes }) => notes[0] === desk.caret.at) ?? desk.heard.find(({ notes }) => notes.includes(desk.caret.at ?? '')) ?? desk.heard.find(({ measure }) => measure === here);
}
