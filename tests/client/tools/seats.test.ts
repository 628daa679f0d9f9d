import { describe, expect, it } from 'vitest';
import { toggleSeat } from '../../../client/tools/line/seats.ts';

const all = ['1o', '1i', '2o', '2i'];

describe('for whom a slip is', () => {
  it('from the whole section a first seat means that seat alone', () => {
    expect(toggleSeat('all', '1i', all)).toEqual(['1i']);
  });

  it('seats are taken in front to back and out again', () => {
    expect(toggleSeat(['2o'], '1o', all)).toEqual(['1o', '2o']);
    expect(toggleSeat(['1o', '2o'], '1o', all)).toEqual(['2o']);
  });

  it('no seat left, and every seat chosen, is the whole section', () => {
    expect(toggleSeat(['1o'], '1o', all)).toBe('all');
    expect(toggleSeat(['1o', '1i', '2o'], '2i', all)).toBe('all');
  });
});
