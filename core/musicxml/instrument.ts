import type { InstrumentName } from '../music/part.ts';
import { childrenNamed, descend, textOf, type XmlElement } from './element.ts';

/** Names in English, German, French and Italian, most telling first; what is no bowed string is caught before. Common practice, no source. */
const NOT_BOWED = /guitar|gitarre|guitare|chitarra|trombone|posaune|fagott|bassoon|basson|fagotto|clarinet|klarinette|clarinette|clarinetto|flute|flöte|flauto|horn|tuba|drum|trommel|piano|voice|voix|choir|chor\b|sax|oboe|trumpet|tromba|basso continuo|gamba|viola d'amore|organ|harp|tenor|soprano|alto\b(?!\s*(i|ii|1|2)?$)|bass(e|o)?\s*(solo|voice|guitar|drum|clarinet|trombone)/i;
const NAMES: [InstrumentName, RegExp][] = [
  ['double-bass', /violone|contra\s?bass|kontrabass|contrebasse|contrabb?asso|double\s?bass|string\s?bass|\b(cb|kb|db)\b\.?/i],
  ['cello', /cello|celli|\bvlc\b|\bvc\b|violoncelle/i],
  ['viola', /\bviol(a|as|e)\b|bratsche|\baltos?\b|\bbr\b|\bvla\b|\bva\b/i],
  ['violin', /violin|violon|geige|\bvln\b|\bvl\b|\bvn\b|fiddle/i],
  ['double-bass', /^\s*(bass|basses|bassi|basso|bässe)\s*$/i],
];
const SOUNDS: Record<string, InstrumentName> = { 'strings.violin': 'violin', 'strings.viola': 'viola', 'strings.cello': 'cello', 'strings.contrabass': 'double-bass' };
/** General MIDI programs, from 1. */
const PROGRAMS: Record<number, InstrumentName> = { 41: 'violin', 42: 'viola', 43: 'cello', 44: 'double-bass', 111: 'violin' };

/**
 * Which bowed string a part is for, or null. Its names decide, then the sound id of MusicXML, then the MIDI program.
 * Example: a part named "Violoncelli" is "cello"; "Bass Trombone" is null.
 */
export function instrumentOf(name: string, listed: XmlElement | undefined): InstrumentName | null {
  const named = byName(name);
  if (named !== undefined) return named;
  if (!listed) return null;
  const instruments = childrenNamed(listed, 'score-instrument');
  for (const instrument of instruments) {
    const sound = textOf(instrument, 'instrument-sound');
    if (sound) return SOUNDS[sound.split('.').slice(0, 2).join('.')] ?? null;
  }
  for (const text of [...instruments.map((instrument) => textOf(instrument, 'instrument-name')), textOf(listed, 'part-abbreviation')]) {
    const found = text ? byName(text) : undefined;
    if (found !== undefined) return found;
  }
  const program = Number(descend(listed, 'midi-instrument', 'midi-program')?.text ?? NaN);
  return PROGRAMS[program] ?? null;
}

/** null: surely something else; undefined: the name does not say. */
function byName(name: string): InstrumentName | null | undefined {
  if (NOT_BOWED.test(name)) return null;
  return NAMES.find(([, pattern]) => pattern.test(name))?.[0];
}
