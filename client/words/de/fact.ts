import type { Fact } from '../../../core/check/fact.ts';
import { seatWords } from '../../../core/music/markWords.ts';
import { comma, listed } from './german.ts';
import { marks, pitch } from './marks.ts';

const NOUNS = { semitone: ['Halbton', 'Halbtöne'], quarter: ['Viertel', 'Viertel'], 'unmarked bow': ['unbezeichneten Strich', 'unbezeichneten Strichen'] } as const;

/** What fills a blank of a finding; `measure` names a measure by its ordinal. */
export function fact(value: Fact, measure: (ordinal: number) => string): string {
  if (typeof value === 'number') return comma(String(value));
  if (typeof value === 'string') return value === 'up' || value === 'down' ? marks.bow[value] : comma(value);
  if ('pitch' in value) return value.pitch ? pitch(value.pitch) : 'dieser Note';
  if ('count' in value) return value.count === 0 ? 'keine eigene Zeit' : `${comma(String(value.count))} ${NOUNS[value.of][value.count === 1 ? 0 : 1]}`;
  if ('measure' in value) return `Takt ${measure(value.measure)}`;
  if ('seats' in value) return seatWords([...value.seats], marks);
  if ('names' in value) return listed(value.names);
  return 'assumedDynamic' in value ? `${value.assumedDynamic} (noch ist keine Lautstärke gedruckt)` : `, wenn ein Viertel ${value.assumedTempo} geht`;
}
