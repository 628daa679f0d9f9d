import type { Waiting } from '../../../core/agreement/waiting/waitsFor.ts';
import { words } from '../../words/words.ts';

/** Longest piece of talk that is repeated in a list; the talk itself hangs at its place. Chosen, not measured. */
const LONGEST = 90;
const shortened = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST - 1).trimEnd()}…` : text);

/** What waits, in a sentence. `name`: how a measure is called. */
export function waitSentence(waiting: Waiting, name: (ordinal: number) => string): string {
  const { waits } = words;
  if (waiting.kind === 'named') return waits.named(waiting.who, words.inMeasures(name(waiting.measure), name(waiting.measure)), shortened(waiting.text));
  const slip = `${name(waiting.from)}${waiting.letter}`;
  if (waiting.kind === 'vote') return waits.vote(slip, waiting.who);
  return waiting.kind === 'talk' ? waits.talk(slip, waiting.who, shortened(waiting.text)) : waits[waiting.status](slip, waiting.who);
}
