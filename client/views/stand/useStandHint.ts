import { useHint, type Hint } from '../../ui/hints.ts';
import { words } from '../../words/words.ts';
import { mayMark, type Desk } from './desk.ts';

const MARKING: readonly Hint[] = ['note', 'open', 'fingerings'];
const READING: readonly Hint[] = ['open'];

/** What to try next on the stand, for who has not yet; null when that is known or something else lies open. */
export function useStandHint(desk: Desk): string | null {
  const { me, pencil, caret, offers } = desk;
  const done: Hint[] = ['part'];
  if (pencil.draft.length || pencil.alone.length) done.push('note');
  if (caret.open !== null) done.push('open');
  if (offers.asked) done.push('fingerings');
  const hint = useHint(me.id, mayMark(desk) ? MARKING : READING, done);
  const { hints, touched } = words.anywhere;
  const said = matchMedia('(pointer: coarse)').matches ? touched : hints;
  return hint === 'note' || hint === 'open' || hint === 'fingerings' ? said[hint] : null;
}
