import { describe, expect, it } from 'vitest';
import { guessedFirst, weaknessOf } from '../../../server/signIn/weakness.ts';

const NAMES = ['Mona Castell', 'mona.c', 'Varnholm Strings'];
const weakness = (password: string) => weaknessOf(password, NAMES);

describe('a new password', () => {
  it.each([
    ['eleven signs', 'k7Rw!pz0qLm', 'PASSWORD_SHORT'],
    ['twelve signs', 'k7Rw!pz0qLmX', null],
    ['128 signs', 'k7Rw!pz0'.repeat(2) + 'Umbrella over the harbour at dusk, '.repeat(3) + 'seven', null],
    ['129 signs', 'a'.repeat(129), 'PASSWORD_LONG'],
    ['letters beyond the first plane count once', '𝄞'.repeat(11), 'PASSWORD_SHORT'],
    ['a common one', '1qaz2wsx3edc', 'PASSWORD_COMMON'],
    ['a common one in capitals', 'JustinBieber', 'PASSWORD_COMMON'],
    ['a common one with figures after it', 'password2026', 'PASSWORD_COMMON'],
    ['two common ones put together', 'monkeydragon', 'PASSWORD_COMMON'],
    ['a few signs over and over', 'abcabcabcabcab', 'PASSWORD_COMMON'],
    ['one’s own name', 'castell-on-the-4th-string', 'PASSWORD_NAMES'],
    ['one’s own name with accents', 'Càstéll on the 4th string', 'PASSWORD_NAMES'],
    ['the ensemble', 'in Varnholm it rains', 'PASSWORD_NAMES'],
    ['ours', 'BowLine-at-noon-17', 'PASSWORD_NAMES'],
    ['small letters only', 'heron under wet slate roofs', null],
    ['figures only', '840291736650', null],
    ['any script', 'озеро под мокрой крышей', null],
    ['spaces before and after', '  kettle  quarry  ', null],
  ])('%s: %s is %s', async (_, password, expected) => {
    expect(await weakness(password)).toBe(expected);
  });

  it('may hold short names, which say nothing of who one is', () => {
    expect(guessedFirst(['Ida Lund'])).toEqual(['bowline', 'lund', 'idalund']);
  });
});
