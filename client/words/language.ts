import { en, type Words } from './en.ts';
import { speak } from './words.ts';

/** Languages by their own names, as they are offered. */
export const LANGUAGES = { en: 'English', de: 'Deutsch', fr: 'Français', it: 'Italiano' } as const;
export type Language = keyof typeof LANGUAGES;

const KEY = 'bowline/language';

/** English comes with the page; another table is fetched by who reads it. */
const TABLES: Record<Language, () => Promise<Words>> = {
  en: () => Promise.resolve(en),
  de: async () => (await import('./de/de.ts')).de,
  fr: async () => (await import('./fr/fr.ts')).fr,
  it: async () => (await import('./it/it.ts')).it,
};

const known = (said: string | null | undefined): Language | null => (said && Object.hasOwn(LANGUAGES, said) ? (said as Language) : null);

/** What was chosen in this browser, else the first of the browser's languages that is spoken here. Example: `spokenIn(null, ['de-AT', 'en'])` is "de". */
export const spokenIn = (kept: string | null, browser: readonly string[]): Language =>
  known(kept) ?? browser.map((tag) => known(tag.toLowerCase().split('-')[0])).find((found) => found !== null) ?? 'en';

/** The language in use. */
export const languageNow = (): Language => known(document.documentElement.lang) ?? 'en';

const listeners = new Set<() => void>();

/** Tells when another language is spoken; the answer ends it. */
export function onLanguage(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

async function speakIn(language: Language): Promise<void> {
  speak(await TABLES[language]());
  document.documentElement.lang = language;
  for (const listener of listeners) listener();
}

/** Before the first screen. Where the words cannot be fetched, English stands. */
export const startLanguage = (): Promise<void> => speakIn(spokenIn(localStorage.getItem(KEY), navigator.languages)).catch(() => undefined);

/** Spoken from now on and kept in this browser. Rejects where its words cannot be fetched; the language stays then. */
export async function chooseLanguage(language: Language): Promise<void> {
  await speakIn(language);
  localStorage.setItem(KEY, language);
}
