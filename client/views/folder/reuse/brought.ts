import type { BroughtIn } from '../../../../core/archive/wire.ts';
import { words } from '../../../words/words.ts';

/** What came of laying marks, part by part; a part that took nothing says why. */
export function broughtSentence({ parts }: BroughtIn): string {
  if (!parts.length) return words.reuse.nothingBrought;
  return parts.map(({ name, slips, inked, left, refusal }) => [words.reuse.brought(name, slips, inked, left), refusal].filter(Boolean).join(' ')).join(' ');
}
