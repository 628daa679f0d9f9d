import { describe, expect, it } from 'vitest';
import type { MarkValue } from '../../../core/music/mark.ts';
import { markWords, seatWords } from '../../../core/music/markWords.ts';

describe('a mark in words', () => {
  const cases: [MarkValue, string][] = [
    [{ kind: 'finger', finger: 3 }, 'finger 3'],
    [{ kind: 'finger', finger: 0 }, 'open string'],
    [{ kind: 'finger', finger: 'thumb' }, 'thumb'],
    [{ kind: 'finger', finger: 2, substitution: 1 }, 'finger 2, then finger 1 on the same note'],
    [{ kind: 'string', string: 1 }, 'string I'],
    [{ kind: 'string', string: 4 }, 'string IV'],
    [{ kind: 'reach', reach: 'extension' }, 'extension'],
    [{ kind: 'harmonic', harmonic: 'natural' }, 'harmonic'],
    [{ kind: 'harmonic', harmonic: 'artificial' }, 'artificial harmonic'],
    [{ kind: 'bow', bow: 'down' }, 'down-bow'],
    [{ kind: 'bow', bow: 'up' }, 'up-bow'],
    [{ kind: 'change', after: 0 }, 'bow change as the note begins'],
    [{ kind: 'change', after: 1 }, 'bow change 1 beat into the note'],
    [{ kind: 'change', after: '3/2' }, 'bow change 1 1/2 beats into the note'],
    [{ kind: 'change', after: '1/2' }, 'bow change 1/2 beat into the note'],
    [{ kind: 'retake' }, 'retake'],
    [{ kind: 'hooked' }, 'hooked'],
    [{ kind: 'slur', slur: 'split' }, 'new slur from this note'],
    [{ kind: 'slur', slur: 'join' }, 'slur goes on to the next note'],
    [{ kind: 'text', text: 'sul G' }, '“sul G”'],
    [{ kind: 'none', slot: 'bow' }, 'no bow sign'],
    [{ kind: 'none', slot: 'change' }, 'no bow change'],
    [{ kind: 'none', slot: 'change', after: 2 }, 'no bow change 2 beats into the note'],
  ];
  it.each(cases)('%j is said so that a player can play it', (value, words) => {
    expect(markWords(value)).toBe(words);
  });

  it('counts in the beat of the measure: six quavers are two beats of 6/8', () => {
    expect(markWords({ kind: 'change', after: 3 }, '3/2')).toBe('bow change 2 beats into the note');
    expect(markWords({ kind: 'change', after: '9/4' }, '3/2')).toBe('bow change 1 1/2 beats into the note');
  });

  it('says whose part it is on', () => {
    expect(seatWords('all')).toBe('the whole section');
    expect(seatWords(['1o', '12i'])).toBe('desk 1 outside, desk 12 inside');
  });
});
