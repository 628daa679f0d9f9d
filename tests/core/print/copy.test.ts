import { describe, expect, it } from 'vitest';
import type { AgreementState, StandingMark } from '../../../core/agreement/state.ts';
import type { MarkValue } from '../../../core/music/mark.ts';
import { seatsFor, type Seats } from '../../../core/music/seat.ts';
import { marksOnCopy, readersOf, readerWords } from '../../../core/print/copy.ts';

const SECTION = seatsFor(5);
const stamp = { by: 'p', name: 'P', at: '2026-11-26T09:00:00Z', seq: 1 };
const ink = (note: string, value: MarkValue, seats: Seats): StandingMark => ({ mark: { note, value }, seats, measure: 1, proposal: 'x', why: '', inked: stamp, superseded: null });
const inState = (...marks: StandingMark[]) => ({ ink: marks }) as unknown as AgreementState;
const finger = (figure: 1 | 2): MarkValue => ({ kind: 'finger', finger: figure });

describe('whose copy it is', () => {
  it.each([['section', SECTION, ''], ['2', ['2o', '2i'], 'Desk 2'], ['3', ['3o'], 'Desk 3'], ['1i', ['1i'], 'Desk 1, inside'], ['9', [], 'Desk 9'], ['3i', [], 'Desk 3, inside']])('%s is for %j', (reader, seats, said) => {
    expect(readersOf(reader, SECTION)).toEqual(seats);
    expect(readerWords(reader)).toBe(said);
  });
});

describe('marks on a copy', () => {
  const state = inState(ink('a', finger(1), 'all'), ink('a', finger(2), ['1i', '2i']), ink('b', { kind: 'change', after: 1 }, ['1o']), ink('b', { kind: 'change', after: 2 }, ['1i']), ink('b', { kind: 'change', after: 3 }, ['2o', '2i']));

  it('of the section are those for everybody', () => expect(marksOnCopy(state, 'section', SECTION)).toEqual([{ note: 'a', value: finger(1), seats: 'all' }]));

  it('of a seat are its own, as if for all', () => {
    expect(marksOnCopy(state, '1i', SECTION)).toEqual([{ note: 'a', value: finger(2), seats: 'all' }, { note: 'b', value: { kind: 'change', after: 2 }, seats: 'all' }]);
  });

  it('of a desk say whose they are where the two differ', () => {
    expect(marksOnCopy(state, '1', SECTION)).toEqual([
      { note: 'a', value: finger(1), seats: ['1o'] }, { note: 'a', value: finger(2), seats: ['1i'] },
      { note: 'b', value: { kind: 'change', after: 1 }, seats: ['1o'] }, { note: 'b', value: { kind: 'change', after: 2 }, seats: ['1i'] },
    ]);
  });

  it('of a desk are for all of it where both have them', () => {
    expect(marksOnCopy(state, '2', SECTION).at(-1)).toEqual({ note: 'b', value: { kind: 'change', after: 3 }, seats: 'all' });
  });

  it('what both have by different ways is said once', () => {
    const twice = inState(ink('a', finger(1), ['1o']), ink('a', finger(1), ['1i']));
    expect(marksOnCopy(twice, '1', SECTION)).toEqual([{ note: 'a', value: finger(1), seats: 'all' }]);
  });
});
