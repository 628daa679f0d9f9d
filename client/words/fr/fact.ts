import type { Fact } from '../../../core/check/fact.ts';
import { seatWords } from '../../../core/music/markWords.ts';
import { comma, listed } from './french.ts';
import { marks, pitch } from './marks.ts';

const NOUNS = { semitone: ['demi-ton', 'demi-tons'], quarter: ['noire', 'noires'], 'unmarked bow': ['coup d’archet sans signe', 'coups d’archet sans signe'] } as const;

/** What fills a blank of a finding; `measure` names a measure by its ordinal. */
export function fact(value: Fact, measure: (ordinal: number) => string): string {
  if (typeof value === 'number') return comma(String(value));
  if (typeof value === 'string') return value === 'up' || value === 'down' ? marks.bow[value] : comma(value);
  if ('pitch' in value) return value.pitch ? pitch(value.pitch) : 'cette note';
  // French counts in the plural from two on.
  if ('count' in value) return value.count === 0 ? 'aucun temps à elle' : `${comma(String(value.count))} ${NOUNS[value.of][value.count < 2 ? 0 : 1]}`;
  if ('measure' in value) return `la mesure ${measure(value.measure)}`;
  if ('seats' in value) return seatWords([...value.seats], marks);
  if ('names' in value) return listed(value.names);
  return 'assumedDynamic' in value ? `${value.assumedDynamic} (aucune nuance n’est encore imprimée)` : `, si la noire est à ${value.assumedTempo}`;
}
