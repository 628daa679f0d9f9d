import { describe, expect, it } from 'vitest';
import { changedSeating, peopleIn, placeIn, seatedIn, sectionsOf } from '../../../core/agreement/seating.ts';
import type { SectionView } from '../../../core/agreement/wire/http.ts';

const who = (name: string) => ({ id: name.toLowerCase(), name });
const seats = (...names: (string | null)[]) => names.map((name, i) => ({ seat: ['1o', '1i', '2o', '2i'][i]!, person: name ? who(name) : null }));
const firsts: SectionView = { id: 'v1', name: 'First violins', instrument: 'violin', seats: seats('Ilya', 'Mona', 'Jon'), principal: who('Ilya'), settings: { stagger: 0.5 } };
const own = { section: 'v1', seats: seats('Mona', null, 'Ada', 'Jon'), principal: who('Rut') };

describe('who sits in a programme', () => {
  it('is the programme’s own plan where it has one, else as usual; what the section settled holds in both', () => {
    expect(seatedIn(firsts, [{ ...own, section: 'v2' }])).toBe(firsts);
    expect(seatedIn(firsts, [own])).toEqual({ ...firsts, seats: own.seats, principal: own.principal });
  });

  it('has a place: a seat, the lead, both, or none', () => {
    const now = seatedIn(firsts, [own]);
    expect(['mona', 'rut', 'ilya'].map((id) => placeIn(now, id))).toEqual([{ principal: false, seat: '1o' }, { principal: true, seat: null }, null]);
    expect(placeIn(firsts, 'ilya')).toEqual({ principal: true, seat: '1o' });
  });

  it('is in the sections where one has a place in that programme', () => {
    const seconds = { ...firsts, id: 'v2', seats: seats('Mona'), principal: null };
    expect([sectionsOf([firsts, seconds], [], 'mona'), sectionsOf([firsts, seconds], [own], 'ada'), sectionsOf([firsts, seconds], [own], 'ilya')]).toEqual([['v1', 'v2'], ['v1'], []]);
  });

  it('names everybody once, front to back, a principal without a seat last', () => {
    expect(peopleIn(own).map(({ name }) => name)).toEqual(['Mona', 'Ada', 'Jon', 'Rut']);
    expect(peopleIn(firsts).map(({ name }) => name)).toEqual(['Ilya', 'Mona', 'Jon']);
  });

  it('tells deputies and who is away; a change of chairs is neither', () => {
    expect(changedSeating(firsts, own)).toEqual({ deputies: [who('Ada'), who('Rut')], away: [who('Ilya')] });
    expect(changedSeating(firsts, firsts)).toEqual({ deputies: [], away: [] });
  });
});
