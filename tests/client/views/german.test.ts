import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { SignKeys } from '../../../client/tools/pencil/SignKeys.tsx';
import { Languages } from '../../../client/views/shelf/Languages.tsx';
import { KeysList } from '../../../client/views/stand/KeysList.tsx';
import { de } from '../../../client/words/de/de.ts';
import { en } from '../../../client/words/en.ts';
import { speak } from '../../../client/words/words.ts';

const labels = (html: string): string[] => [...html.matchAll(/aria-label="([^"]*)"|class="offstage">([^<]*)</g)].map(([, label, text]) => label ?? text!);

describe('the screens in German', () => {
  beforeAll(() => {
    vi.stubGlobal('document', { documentElement: { lang: 'de' } });
    speak(de);
  });
  afterAll(() => {
    vi.unstubAllGlobals();
    speak(en);
  });

  it('the ledge names its signs as German players do, in the words chosen last', () => {
    const ledge = (more: boolean) => labels(renderToStaticMarkup(createElement(SignKeys, { more, onMore: () => {}, onCommand: () => {}, substituting: false })));
    expect(ledge(false)).toEqual(['Zeichen', 'leere Saite', '1. Finger', '2. Finger', '3. Finger', '4. Finger', 'Saite I', 'Saite II', 'Saite III', 'Saite IV', 'Abstrich', 'Aufstrich', 'Bogenwechsel', 'Hand: Streckung, Zusammenziehen, keines', 'mehr Zeichen']);
    expect(ledge(true)).toContain('Daumen');
    speak(en);
    expect(ledge(true)).toContain('thumb');
    speak(de);
  });

  it('every language stands under its own name, and the one in use is marked', () => {
    const html = renderToStaticMarkup(createElement(Languages, { act: async () => {} }));
    expect([...html.matchAll(/<button[^>]*lang="(\w\w)"[^>]*aria-pressed="(\w+)"[^>]*>([^<]+)</g)].map(([, ...found]) => found)).toEqual([['en', 'false', 'English'], ['de', 'true', 'Deutsch'], ['fr', 'false', 'Français'], ['it', 'false', 'Italiano']]);
  });

  it('the keys are called as they are printed on a German keyboard', () => {
    const html = renderToStaticMarkup(createElement(KeysList, { onClose: () => {}, onCommand: () => {} }));
    for (const key of ['Strg', 'Umschalt', 'Rücktaste', 'Eingabe']) expect(html).toContain(key);
    expect(html).not.toMatch(/Shift|Backspace|Enter/);
  });
});
