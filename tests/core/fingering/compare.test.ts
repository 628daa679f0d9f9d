import { describe, expect, it } from 'vitest';
import { compareFingerings } from '../../../core/fingering/compare.ts';
import { explain } from '../../../core/fingering/explain.ts';
import { handFacts } from '../../../core/fingering/explain/handFacts.ts';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { HAND_IN_ENGLISH } from '../../../core/fingering/words/english.ts';
import { noteNames } from '../../../core/fingering/words/noteNames.ts';
import { stepWords } from '../../../core/fingering/words/stepWords.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { eighths } from './lines.ts';

const instrument = instrumentNamed('violin');
const line = eighths([67, 69, 71, 72, 74, 76, 78, 79, 81, 83, 84, 86, 88, 86, 84, 83, 81, 79]);
const played = { instrument, line };
const { fingerings } = fingerLine(instrument, line, 90, { best: 5 });
const pairs = fingerings.flatMap((a, i) => fingerings.slice(i + 1).map((b) => [a, b] as const));

describe('two fingerings side by side', () => {
  it('a fingering beside itself differs nowhere and in no cost', () => {
    const { differences, terms, cost } = compareFingerings(played, fingerings[0]!, fingerings[0]!);
    expect(differences).toEqual([]);
    expect(terms.map(({ difference }) => difference)).toEqual(terms.map(() => 0));
    expect(cost.difference).toBe(0);
  });

  it.each(pairs.map(([a, b], i) => [i, a, b] as const))('pair %i: the differences hold every shift and crossing by which the totals differ', (_i, a, b) => {
    const { differences, a: one, b: other } = compareFingerings(played, a, b);
    const sum = (count: (facts: (typeof differences)[number]['a']) => number): number => differences.reduce((total, d) => total + count(d.a) - count(d.b), 0);
    expect(differences.length).toBeGreaterThan(0);
    expect(sum(({ shifts }) => shifts)).toBe(one.shifts - other.shifts);
    expect(sum(({ crossings }) => crossings)).toBe(one.crossings - other.crossings);
    expect(sum(({ openStrings }) => openStrings)).toBe(one.openStrings - other.openStrings);
  });

  it.each(pairs.map(([a, b], i) => [i, a, b] as const))('pair %i: the differences of the costs by term add up to the difference of the costs', (_i, a, b) => {
    const { terms, cost } = compareFingerings(played, a, b);
    expect(terms.reduce((sum, { difference }) => sum + difference, 0)).toBeCloseTo(cost.difference, 2);
  });

  it('is the same from the other side, with the signs turned', () => {
    const [there, back] = [compareFingerings(played, fingerings[0]!, fingerings[1]!), compareFingerings(played, fingerings[1]!, fingerings[0]!)];
    expect(back.differences.map(({ notes, a, b }) => ({ notes, a: b, b: a }))).toEqual(there.differences.map(({ notes, a, b }) => ({ notes, a, b })));
    expect(back.cost.difference).toBe(-there.cost.difference);
  });

  it('says a sentence for every difference, in which no blank is left', () => {
    for (const [a, b] of pairs) {
      const { differences, totals } = explain(HAND_IN_ENGLISH, played, compareFingerings(played, a, b));
      for (const sentence of [...differences, ...totals]) expect(sentence).toMatch(/^[^{}]+\.$/);
      for (const sentence of [...differences, ...totals]) expect(sentence).not.toMatch(/undefined|NaN|null/);
    }
  });
});

describe('a step in words', () => {
  it('a shift gives its name, interval, millimetres and time', () => {
    const two = eighths([71, 76], 'violin', 120);
    const pins = new Map([['n0', { finger: 1 as const, string: 2, position: 1 }], ['n1', { finger: 1 as const, string: 2, position: 4 }]]);
    const { steps } = handFacts({ instrument, line: two }, fingerLine(instrument, two, 120, { pins, best: 1 }).fingerings[0]!);
    expect(stepWords(HAND_IN_ENGLISH, steps[1]!, noteNames(HAND_IN_ENGLISH, two))).toMatch(/^shift on the same finger, a fourth up, \d+ mm, needs \d+ ms of 250 ms: \w+; slides audibly$/);
  });
});
