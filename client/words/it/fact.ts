import type { Fact } from '../../../core/check/fact.ts';
import { seatWords } from '../../../core/music/markWords.ts';
import { comma, listed } from './italian.ts';
import { marks, pitch } from './marks.ts';

const NOUNS = { semitone: ['semitono', 'semitoni'], quarter: ['semiminima', 'semiminime'], 'unmarked bow': ['arcata senza segno', 'arcate senza segno'] } as const;

/** What fills a blank of a finding; `measure` names a measure by its ordinal. */
export function fact(value: Fact, measure: (ordinal: number) => string): string {
  if (typeof value === 'number') return comma(String(value));
  if (typeof value === 'string') return value === 'up' || value === 'down' ? marks.bow[value] : comma(value);
  if ('pitch' in value) return value.pitch ? pitch(value.pitch) : 'questa nota';
  if ('count' in value) return value.count === 0 ? 'nessun tempo proprio' : `${comma(String(value.count))} ${NOUNS[value.of][value.count === 1 ? 0 : 1]}`;
  if ('measure' in value) return `battuta ${measure(value.measure)}`;
  if ('seats' in value) return seatWords([...value.seats], marks);
  if ('names' in value) return listed(value.names);
  return 'assumedDynamic' in value ? `${value.assumedDynamic} (non è ancora stampata nessuna dinamica)` : `, se la semiminima va a ${value.assumedTempo}`;
}
