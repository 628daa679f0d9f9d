import type { Instrument, StringNumber } from '../instruments/instrument.ts';

/** What a text over the notes says about the string. */
export type StringWord = { kind: 'string'; string: StringNumber; /** For one note: a harmonic. */ once: boolean } | { kind: 'ends' };

const PITCH_CLASS: Record<string, number> = { c: 0, do: 0, ut: 0, d: 2, ré: 2, re: 2, e: 4, mi: 4, g: 7, sol: 7, a: 9, la: 9 };
const NUMBER: Record<string, StringNumber> = { i: 1, ii: 2, iii: 3, iv: 4, '1': 1, '2': 2, '3': 3, '4': 4 };

const ON_STRING = /\b(?:[Ss]ul(?:la)?|[Aa]uf(?: der)?|[Oo]n(?: the)?|[Ss]ur(?: la)?)\s+(G|D|A|E|C|Sol|R[eé]|La|Mi|Do|IV|III|II|I)(?![\p{L}\d])/u;
const NAMED_STRING = /(?<![\p{L}\d])([GDAEC])[- ]?(?:saite|string)(?!\p{L})/iu;
const STRING_OF = /(?:corda|corde)\s+(?:di|de|du)?\s*(sol|r[eé]|la|mi|do|ut)(?!\p{L})/iu;
const NUMBERED = /(?<![\p{L}\d])(IV|III|II|I|[1-4])\s*(?:a|ª|º|°|\.|e|me|ème|nd|rd|th|st)?\s*(?:corda|corde|saite|string)(?!\p{L})/iu;
const ENDS = /(?<!\p{L})(?:ord|ordinario|ordinaire|nat|naturale|loco|gewöhnlich|pizz|pizzicato)(?!\p{L})/iu;
const HARMONIC = /(?<!\p{L})(?:flag|flageolet|harm|harmonic|armonico)/iu;

function stringOfPitch(instrument: Instrument, name: string): StringNumber | undefined {
  const index = instrument.openStrings.findIndex((open) => open % 12 === PITCH_CLASS[name.toLowerCase()]);
  return index < 0 ? undefined : ((index + 1) as StringNumber);
}

/**
 * The string a text asks for, by name, number or pitch in Italian, German, French or English, or the end of one; null where the text says neither or names
 * a string this instrument has not. Wordings: common practice, no source. Example: "sul G" on a violin is string 4, "3a corda" string 3, "ord." ends it.
 */
export function stringWord(instrument: Instrument, text: string): StringWord | null {
  const [on, numbered] = [ON_STRING.exec(text)?.[1], NUMBERED.exec(text)?.[1]];
  const name = on ?? NAMED_STRING.exec(text)?.[1] ?? STRING_OF.exec(text)?.[1];
  const string = NUMBER[(numbered ?? on ?? '').toLowerCase()] ?? (name === undefined ? undefined : stringOfPitch(instrument, name));
  if (string) return { kind: 'string', string, once: HARMONIC.test(text) };
  return ENDS.test(text) ? { kind: 'ends' } : null;
}
