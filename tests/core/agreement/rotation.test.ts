import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movingDesks, rotated } from '../../../core/agreement/rotation.ts';
import { seatsFor } from '../../../core/music/seat.ts';

const plan = (people: string) => seatsFor(people.length).map((seat, i) => ({ seat, person: people[i] === '.' ? null : people[i]! }));
const written = (places: { person: string | null }[]) => places.map(({ person }) => person ?? '.').join('');

describe('rotation of desks', () => {
  it.each([
    ['every desk behind the first moves back one, the last comes forward', 'AaBbCcDd', 2, 4, 'AaDdBbCc'],
    ['the whole section', 'AaBbCc', 1, 3, 'CcAaBb'],
    ['a row in the middle leaves the others alone', 'AaBbCcDd', 2, 3, 'AaCcBbDd'],
    ['an odd last desk stays', 'AaBbCcD', 2, 4, 'AaCcBbD'],
    ['an empty chair moves with its desk', 'AaB.Cc', 2, 3, 'AaCcB.'],
    ['one desk has nowhere to go', 'AaBb', 2, 2, 'AaBb'],
    ['a row that no desk lies in changes nothing', 'AaBb', 5, 9, 'AaBb'],
    ['a row from back to front is none', 'AaBbCc', 3, 2, 'AaBbCc'],
  ])('%s', (_, before, from, to, after) => {
    expect(written(rotated(plan(before), from, to))).toBe(after);
  });

  it('loses nobody, and comes round again after as many moves as desks move', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 10 }), fc.integer({ min: 1, max: 10 }), (players, from, to) => {
        const first = seatsFor(players).map((seat) => ({ seat, person: `of ${seat}` }));
        const once = rotated(first, from, to);
        expect(once.map(({ person }) => person).sort()).toEqual(first.map(({ person }) => person).sort());
        let now: ReturnType<typeof rotated> = first;
        for (let n = 0; n < movingDesks(first, from, to).length; n += 1) now = rotated(now, from, to);
        expect(now).toEqual(first);
      }),
    );
  });
});
