import type { PartTally, PieceCheck } from '../../../../core/agreement/wire/piece.ts';
import { words } from '../../../words/words.ts';

const toWatch = ({ counts }: PartTally): number => counts.cannotPlay + counts.collides + counts.worthALook;

/** Where a look through a piece stands, in a sentence; null before the first. */
export function pieceSentence({ running, found, trouble }: PieceCheck): string | null {
  if (running) return running.reading === null ? words.piece.turn : words.piece.reading(running.reading, running.done + 1, running.of);
  if (trouble) return trouble.text;
  if (!found) return null;
  const watched = found.parts.map(toWatch).filter((n) => n > 0);
  return words.piece.found(watched.reduce((sum, n) => sum + n, 0), watched.length);
}
