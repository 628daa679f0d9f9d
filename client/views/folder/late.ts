import type { WaitedFor } from '../../../core/season/late.ts';
import { words } from '../../words/words.ts';

/** When something is due, from the days left. */
export const when = (days: number): string => (days < 0 ? words.season.lateBy(-days) : words.season.dueIn(days));

/** Who is waited for, as a sentence; empty when nobody is. */
export function turnSentence(waited: WaitedFor): string {
  const { turn } = words.season;
  if (waited.turn === 'nobody') return '';
  if (waited.turn === 'principal') return turn.principal(waited.principal.name);
  if (waited.turn === 'players') return turn.players(waited.players.map(({ name }) => name), waited.principal?.name ?? null);
  return turn[waited.turn];
}

/** The same as fits under a part. */
export function shortTurn(waited: WaitedFor): string {
  const { shortTurn: turn } = words.season;
  if (waited.turn === 'nobody') return '';
  if (waited.turn === 'principal') return turn.principal(waited.principal.name);
  return waited.turn === 'players' ? turn.players(waited.players.length) : turn[waited.turn];
}
