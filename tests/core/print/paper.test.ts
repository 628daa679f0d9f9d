import { describe, expect, it } from 'vitest';
import { paperNamed, staffAllowed } from '../../../core/print/paper.ts';

describe('paper', () => {
  it.each([['a4', 210, 297], ['b4', 257, 364], ['9x12', 228.6, 304.8], ['10x13', 254, 330.2]] as const)('%s is %d by %d mm', (name, width, height) => {
    expect(paperNamed(name).width).toBeCloseTo(width, 6);
    expect(paperNamed(name).height).toBeCloseTo(height, 6);
  });
});

describe('the height of a staff', () => {
  it.each([6.99, 0, -1, Number.NaN, 21])('%d mm is refused with what to ask for instead', (staff) => {
    expect(staffAllowed(staff)).toMatchObject({ ok: false, text: expect.stringContaining('7.5 mm is read best') });
  });
  it.each([7, 7.5, 8.5])('%d mm is printed', (staff) => expect(staffAllowed(staff)).toEqual({ ok: true }));
  it('over 8.5 mm is printed with a warning', () => expect(staffAllowed(9)).toMatchObject({ ok: true, warning: expect.stringContaining('more page turns') }));
});
