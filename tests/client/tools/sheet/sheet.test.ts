import { afterAll, describe, expect, it } from 'vitest';
import { COMMANDS, commandOf } from '../../../../client/tools/keys.ts';
import { capsOf, sheetOf } from '../../../../client/tools/sheet/rows.ts';
import { meant } from '../../../../client/tools/sheet/said.ts';
import { de } from '../../../../client/words/de/de.ts';
import { en } from '../../../../client/words/en.ts';
import { fr } from '../../../../client/words/fr/fr.ts';
import { speak } from '../../../../client/words/words.ts';

afterAll(() => speak(en));

/** A press as a browser tells it, read back from the table's own way of writing. */
function press(text: string) {
  const modifiers: string[] = [...text.matchAll(/(?:Ctrl|Shift|Alt)\+/g)].map(([found]) => found);
  const name = text.slice(modifiers.join('').length);
  const shift = modifiers.includes('Shift+');
  const key = name === 'Space' ? ' ' : shift && name.length === 1 ? name.toUpperCase() : name;
  return { key, code: /^\d$/.test(name) ? `Digit${name}` : '', shift, control: modifiers.includes('Ctrl+'), alt: modifiers.includes('Alt+') };
}

describe('the sheet of keys', () => {
  it('every key on it does what its row says', () => {
    const rows = COMMANDS.filter((row) => row.command && !('everywhere' in row));
    expect(rows.length).toBeGreaterThan(50);
    for (const { keys, command } of rows) for (const key of keys) expect(commandOf(press(key)), key).toEqual(command);
  });

  it('no key means two things on the stand', () => {
    const keys = COMMANDS.flatMap((row) => (row.command ? [...row.keys] : []));
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
  });

  it('every command stands on it, alone or in its line', () => {
    const shown = new Set(sheetOf().flatMap(({ rows }) => rows.map(({ name }) => name)));
    expect(COMMANDS.filter((row) => !shown.has('line' in row ? row.line : row.name))).toEqual([]);
  });

  it('modifiers stand once before their keys, as they are printed on the keyboard', () => {
    expect([capsOf(['Shift+1', 'Shift+2']), capsOf(['z', 'Ctrl+z']), capsOf(['-', '−']), capsOf(['+'])]).toEqual(['Shift 1 2', 'z, Ctrl z', '−', '+']);
    speak(de);
    expect(capsOf(['Ctrl+Shift+ArrowLeft', 'Ctrl+Shift+ArrowRight'])).toBe('Strg Umschalt links rechts');
    speak(en);
  });
});

describe('a command in words', () => {
  it.each([
    ['fingerings', { do: 'fingerings' }],
    ['down-bow', { do: 'mark', sign: 'bow', bow: 'down' }],
    ['dark', { do: 'light' }],
    ['go to 46', { do: 'goTo', said: '46' }],
    ['GO 46a', { do: 'goTo', said: '46A' }],
    ['46', { do: 'goTo', said: '46' }],
    ['go to c', { do: 'goTo', said: 'C' }],
    ['history of', { do: 'past' }],
    ['str IV', { do: 'mark', sign: 'string', string: 4 }],
  ])('"%s" means what it says', (said, command) => {
    expect(meant(said)[0]?.command).toEqual(command);
  });

  it('beginnings of words are enough, in any order; what begins earlier comes first', () => {
    expect(meant('bow').map(({ says }) => says).slice(0, 2)).toEqual(['bow change', 'down-bow']);
    expect(meant('watch next').map(({ command }) => command)).toEqual([{ do: 'nextFinding' }]);
  });

  it('nothing said offers everything, nonsense offers nothing', () => {
    expect(meant('')).toHaveLength(COMMANDS.filter(({ command }) => command).length);
    expect([meant('qqq'), meant('?')]).toEqual([[], []]);
  });

  it('is said in the language chosen, with or without its accents', () => {
    speak(de);
    expect([meant('buchstabe C')[0]?.command, meant('zu takt 46')[0]?.command, meant('nachster offener')[0]?.command]).toEqual([{ do: 'goTo', said: 'C' }, { do: 'goTo', said: '46' }, { do: 'nextOpen' }]);
    speak(fr);
    expect([meant('doigtes')[0]?.command, meant('a l encre')[0]?.command]).toEqual([{ do: 'fingerings' }, { do: 'enter' }]);
    speak(en);
  });
});
