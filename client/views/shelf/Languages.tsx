import type { ReactNode } from 'react';
import { chooseLanguage, LANGUAGES, languageNow, type Language } from '../../words/language.ts';
import { words } from '../../words/words.ts';

/** The languages by their own names; the one chosen is kept in this browser. */
export function Languages({ act }: { act(work: () => Promise<void>): Promise<void> }): ReactNode {
  const now = languageNow();
  return (
    <p className="languages" role="group" aria-label={words.language}>
      {(Object.keys(LANGUAGES) as Language[]).map((language) => (
        <button key={language} type="button" lang={language} aria-pressed={language === now} onClick={() => void act(() => chooseLanguage(language))}>
          {LANGUAGES[language]}
        </button>
      ))}
    </p>
  );
}
