import { HAND_IN_ENGLISH } from '../../core/fingering/words/english.ts';
import { HAND_IN_FRENCH } from '../../core/fingering/words/french.ts';
import { HAND_IN_GERMAN } from '../../core/fingering/words/german.ts';
import type { HandWords } from '../../core/fingering/words/handWords.ts';
import { HAND_IN_ITALIAN } from '../../core/fingering/words/italian.ts';
import type { Language } from '../words/language.ts';

const HANDS: Record<Language, HandWords> = { en: HAND_IN_ENGLISH, de: HAND_IN_GERMAN, fr: HAND_IN_FRENCH, it: HAND_IN_ITALIAN };

/** The hand in a language, with measures by their printed numbers; `printed` gives the number of an ordinal. */
export function handIn(language: Language, printed: (ordinal: number) => string): HandWords {
  const words = HANDS[language];
  return { ...words, measure: (n: number) => words.measure(printed(n)), measures: (from: number, to: number) => words.measures(printed(from), printed(to)) };
}
