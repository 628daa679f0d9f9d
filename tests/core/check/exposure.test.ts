import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exposureAt, exposureOfScore, shiftScore, type ShiftFacts } from '../../../core/check/exposure.ts';

const PLAIN: ShiftFacts = { moves: 4, covered: false, changesString: false, smallStep: false, underSlur: false, dynamic: 'mf', bothPartners: false };
const facts: fc.Arbitrary<ShiftFacts> = fc.record({ moves: fc.integer({ min: 0, max: 24 }), covered: fc.boolean(), changesString: fc.boolean(), smallStep: fc.boolean(), underSlur: fc.boolean(), dynamic: fc.constantFrom('pp', 'p', 'mp', 'mf', 'f', 'ff'), bothPartners: fc.boolean() });

describe('how exposed a shift is', () => {
  it.each<[string, Partial<ShiftFacts>, number]>([
    ['counts its semitones', {}, 4],
    ['half across a string change', { changesString: true }, 2],
    ['half for a small step', { smallStep: true }, 2],
    ['half as much again under a slur on one string', { underSlur: true }, 6],
    ['no more under a slur across strings', { underSlur: true, changesString: true }, 2],
    ['double where both partners make it in piano', { bothPartners: true, dynamic: 'p' }, 8],
    ['not double where they make it in mezzoforte', { bothPartners: true }, 4],
    ['less in forte', { dynamic: 'f' }, 2.8],
    ['nothing where it is covered', { covered: true, underSlur: true }, 0],
  ])('%s', (_, change, expected) => {
    expect(shiftScore({ ...PLAIN, ...change })).toBeCloseTo(expected);
  });

  it('never falls when the hand goes further, and never rises when something hides it', () => {
    fc.assert(
      fc.property(facts, (shift) => {
        const score = shiftScore(shift);
        expect(shiftScore({ ...shift, moves: shift.moves + 1 })).toBeGreaterThanOrEqual(score);
        for (const hidden of [{ covered: true }, { changesString: true }, { smallStep: true }]) expect(shiftScore({ ...shift, ...hidden })).toBeLessThanOrEqual(score);
      }),
      { seed: 20261125 },
    );
  });

  it('becomes an exposure between 0 and 1 that grows with it', () => {
    expect([0, 12].map(exposureOfScore)).toEqual([0, 0.5]);
    expect(exposureOfScore(40)).toBeLessThan(1);
    expect(exposureOfScore(20)).toBeGreaterThan(exposureOfScore(19));
  });
});

describe('how much a place leaves open', () => {
  it('falls with loudness', () => {
    const values = ['ppp', 'p', 'mp', 'mf', 'f', 'fff'].map((dynamic) => exposureAt(dynamic, 'mf'));
    expect(values).toEqual([...values].sort((a, b) => b - a));
    expect(new Set(values).size).toBe(values.length);
  });
});
