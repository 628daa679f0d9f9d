import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { count, ordinalWord } from '../../../client/words/english.ts';

/** The texts as they stand in the table, blanks and all. */
const texts = [...readFileSync(join(import.meta.dirname, '../../../client/words/en.ts'), 'utf8').matchAll(/'((?:[^'\\\n]|\\.)*)'|`([^`]*)`/g)].map(([, plain, blanks]) => plain ?? blanks!.replace(/\$\{[^}]*\}/g, ''));

describe('the words of the screens', () => {
  it('are a player\'s, never an office\'s', () => {
    const office = /\b(submit|approve|reject|dashboard|items?|tasks?|users?|errors?|invalid|failed)\b/i;
    expect(texts.length).toBeGreaterThan(200);
    expect(texts.filter((text) => office.test(text))).toEqual([]);
  });

  it('count in words to twelve and then in figures', () => {
    expect([count(1, 'mark'), count(12, 'mark'), count(13, 'mark'), count(0, 'mark')]).toEqual(['One mark', 'Twelve marks', '13 marks', 'No marks']);
  });

  it('number notes as one speaks of them', () => {
    expect([1, 12, 13, 21, 22, 111].map(ordinalWord)).toEqual(['first', 'twelfth', '13th', '21st', '22nd', '111th']);
  });
});
