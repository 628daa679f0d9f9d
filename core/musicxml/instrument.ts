import type { InstrumentName } from '../music/part.ts';
import { childrenNamed, descend, textOf, type XmlElement } from './element.ts';

/** Names in English, German, French, Italian and Latin, most telling first; what is no bowed string is caught before. Common practice, no source. */
const NOT_BOWED = /guitar|gitarre|guitare|chitarra|trombone|posaune|fagott|bassoon|basson|fagotto|clarinet|klarinette|clarinette|clarinetto|flute|flöte|flauto|horn|tuba|drum|trommel|piano|voice|voix|choir|chor\b|sax|oboe|hautbois|trumpet|tromba|basso continuo|gamba|viola d'amore|organ|harp|tenor|soprano|recorder|alto\b(?!\s*\.?\s*(i|ii|1|2)?$)|bass(e|o)?\s*(solo|voice|guitar|drum|clarinet|trombone)/i;
const NAMES: [InstrumentName, RegExp][] = [
  ['double-bass', /violone|contra\s?bass|kontrab(a|ä)ss|contrebasse|contrabb?ass[io]|double\s?bass|string\s?bass|\bc\.\s?b\.|\b(cb|kb|kbs|db|cbs)\b\.?/i],
  ['cello', /violonc|cello|celli|\b(vlc|vcl|vcll|vcelli|vcllo|vclli|vc|vcs)\b|v\.?c(ell)?[lo]?o\b/i],
  ['viola', /\bviol(a|as|e)\b|bratsche|\baltos?\b|\b(br|vla|vlas|vle|va)\b/i],
  ['violin', /violin|violon|geige|\bv\.?n[oi]\b|\b(vln|vlns|vl|vn|vns|viol)\b|\bv(ln|l|n)\.?(?=\d)|\bvv\b|fiddle/i],
  ['double-bass', /^\s*(bass|basses|bassi|basso|bässe)\s*\.?\s*$/i],
];
/** Names of singers too: where the file says what sounds, that decides. */
const OF_SINGERS_TOO = /^\s*(altos?|alti|bass|basses|bassi|basso|bässe)\s*\.?\s*(i|ii|1|2)?\s*$/i;
const SOUNDS: Record<string, InstrumentName> = { 'strings.violin': 'violin', 'strings.viola': 'viola', 'strings.cello': 'cello', 'strings.contrabass': 'double-bass' };
/** General MIDI programs, from 1. */
const PROGRAMS: Record<number, InstrumentName> = { 41: 'violin', 42: 'viola', 43: 'cello', 44: 'double-bass', 111: 'violin' };

/**
 * Which bowed string a part is for, or null. Its names decide, then the sound id of MusicXML, then the MIDI program; a name of singers too gives way to the sound.
 * Example: a part named "Violoncelli" is "cello"; "Bass Trombone" is null; "Alto" is "viola" unless its sound is "voice.alto".
 */
export function instrumentOf(name: string, listed: XmlElement | undefined): InstrumentName | null {
  const sound = soundOf(listed);
  if (OF_SINGERS_TOO.test(name) && sound !== undefined) return sound;
  const named = byName(name);
  if (named !== undefined) return named;
  if (!listed) return null;
  if (sound !== undefined) return sound;
  for (const text of [...childrenNamed(listed, 'score-instrument').map((instrument) => textOf(instrument, 'instrument-name')), textOf(listed, 'part-abbreviation')]) {
    const found = text ? byName(text) : undefined;
    if (found !== undefined) return found;
  }
  const program = Number(descend(listed, 'midi-instrument', 'midi-program')?.text ?? NaN);
  return PROGRAMS[program] ?? null;
}

function soundOf(listed: XmlElement | undefined): InstrumentName | null | undefined {
  for (const instrument of listed ? childrenNamed(listed, 'score-instrument') : []) {
    const sound = textOf(instrument, 'instrument-sound');
    if (sound) return SOUNDS[sound.split('.').slice(0, 2).join('.')] ?? null;
  }
  return undefined;
}

/** null: surely something else; undefined: the name does not say. */
function byName(name: string): InstrumentName | null | undefined {
  if (NOT_BOWED.test(name)) return null;
  return NAMES.find(([, pattern]) => pattern.test(name))?.[0];
}
