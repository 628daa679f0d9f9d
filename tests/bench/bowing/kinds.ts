import type { Direction } from '../../../core/bowing/strokes.ts';
import type { BowLine } from './lines.ts';

/** What kind of place a printed sign stands on: editions print signs mostly where the rules would lead elsewhere. */
export function kindOf({ facts, given }: BowLine, i: number): string {
  const [own, way] = [facts[i]!, given[i] as Direction];
  const repeats = (given[i - 1] === way && own.restBefore === 0) || (given[i + 1] === way && facts[i + 1]!.restBefore === 0);
  if (repeats) return 'same sign on the next or last bow';
  if (own.level === 0 && way === 'up') return 'up-bow on the barline';
  if (own.level >= 2 && way === 'down') return own.restBefore > 0 ? 'down-bow after a rest, off the strong beats' : 'down-bow inside a phrase, off the strong beats';
  return 'other places';
}
