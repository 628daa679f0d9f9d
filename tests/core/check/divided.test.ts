import { describe, expect, it } from 'vitest';
import { dividedMeasures } from '../../../core/check/divided.ts';
import { partOf } from '../../support/partBuilder.ts';

function partWith(...words: string[][]) {
  const part = partOf(words.map(() => 'A4:4').join(' | '));
  return { ...part, measures: part.measures.map((measure, i) => ({ ...measure, words: words[i]!.map((text) => ({ text, at: 0 })) })) };
}

describe('where a part says that it is divided', () => {
  it.each([
    ['from the word to the word', [['div.'], [], ['unis.'], []], [1, 2]],
    ['to the end where nothing ends it', [[], ['divisi'], []], [2, 3]],
    ['not where it is denied', [['non div.'], []], []],
    ['not for words that only look alike', [['divertimento'], ['unisolo']], []],
  ])('%s', (_title, words, expected) => {
    expect([...dividedMeasures(partWith(...words))]).toEqual(expected);
  });

  it('both in one measure: there it is, for some beats', () => {
    const part = partWith([], []);
    part.measures[0]!.words = [{ text: 'div.', at: 0 }, { text: 'unis.', at: 2 }];
    expect([...dividedMeasures(part)]).toEqual([1]);
  });
});
