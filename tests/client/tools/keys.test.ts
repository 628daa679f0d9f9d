import { describe, expect, it } from 'vitest';
import { commandOf, type KeyPress } from '../../../client/tools/keys.ts';

const press = (key: string, more: Partial<KeyPress> = {}) => commandOf({ key, code: '', shift: false, control: false, alt: false, ...more });

describe('keys on the stand', () => {
  it.each([
    ['a digit is a finger', press('2', { code: 'Digit2' }), { do: 'mark', sign: 'finger', finger: 2 }],
    ['0 is the open string', press('0', { code: 'Digit0' }), { do: 'mark', sign: 'finger', finger: 0 }],
    ['Shift and a digit is a string, whatever the layout writes on it', press('"', { code: 'Digit2', shift: true }), { do: 'mark', sign: 'string', string: 2 }],
    ['a digit of the number pad is a finger', press('4', { code: 'Numpad4' }), { do: 'mark', sign: 'finger', finger: 4 }],
    ['t is the thumb', press('t'), { do: 'mark', sign: 'finger', finger: 'thumb' }],
    ['d is a down-bow', press('d'), { do: 'mark', sign: 'bow', bow: 'down' }],
    ['an arrow with Ctrl goes by measures', press('ArrowLeft', { control: true }), { do: 'step', by: -1, unit: 'measure', extend: false }],
    ['an arrow with Shift extends', press('ArrowRight', { shift: true }), { do: 'step', by: 1, unit: 'note', extend: true }],
    ['z takes back', press('z'), { do: 'undo' }],
    ['Shift z writes again', press('Z', { shift: true }), { do: 'redo' }],
    ['plus votes for, on layouts that need Shift for it too', press('+', { shift: true }), { do: 'for' }],
    ['Ctrl P lays the part out for paper', press('p', { control: true }), { do: 'print' }],
    ['Space is heard by one player', press(' '), { do: 'hear' }],
    ['Shift Space by the section', press(' ', { shift: true }), { do: 'hearSection' }],
    ['the question mark lists the keys', press('?', { shift: true }), { do: 'keys' }],
    ['capitals with the lock on still mean the letter', press('C'), { do: 'mark', sign: 'change' }],
  ])('%s', (_, command, expected) => {
    expect(command).toEqual(expected);
  });

  it('leaves to the browser what is its own: Alt, Ctrl and letters, fingers there are not', () => {
    expect([press('d', { alt: true }), press('d', { control: true }), press('7', { code: 'Digit7' }), press('0', { code: 'Digit0', shift: true }), press('F5')]).toEqual([null, null, null, null, null]);
  });
});
