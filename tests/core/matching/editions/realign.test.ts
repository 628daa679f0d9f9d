import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { realign } from '../../../../core/matching/editions/realign.ts';
import type { Part } from '../../../../core/music/part.ts';
import { readScore } from '../../../../core/musicxml/readScore.ts';
import { note, scoreText } from '../../../support/scoreText.ts';

const PITCHES = ['C5', 'D5', 'E5', 'F#5', 'G5', 'A5', 'B5'] as const;

/** A measure of four quarters, some of them rests. */
const measure = fc.array(fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...PITCHES) }, { weight: 1, arbitrary: fc.constant('rest') }), { minLength: 4, maxLength: 4 });
const piece = fc.array(measure, { minLength: 3, maxLength: 12 });

const SCALE = [['C5', 'D5', 'E5', 'F#5'], ['G5', 'F#5', 'A5', 'B5'], ['E5', 'B5', 'rest', 'G5'], ['A5', 'D5', 'F#5', 'C5']];

function partOf(measures: readonly (readonly string[])[]): Part {
  const read = readScore(scoreText(measures.map((pitches) => pitches.map((pitch) => note(pitch, 4)).join(''))));
  if (!read.ok) throw new Error(read.fault.text);
  return read.score.parts[0]!;
}

const ids = (part: Part) => part.measures.map(({ notes }) => notes.map(({ id }) => id));
const flat = (part: Part) => ids(part).flat();

describe('the ids of notes', () => {
  it('are the same whenever the same file is read', () => {
    fc.assert(fc.property(piece, (measures) => void expect(ids(partOf(measures))).toEqual(ids(partOf(measures)))));
  });

  it('are unique in a part and fit to be XML ids', () => {
    fc.assert(
      fc.property(piece, (measures) => {
        const all = flat(partOf(measures));
        expect(new Set(all).size).toBe(all.length);
        expect(all.every((id) => /^n[a-z2-7]{12}$/.test(id))).toBe(true);
      }),
    );
  });

  it('stay when a pitch is corrected, even without the earlier edition at hand', () => {
    fc.assert(
      fc.property(piece, fc.nat(), fc.nat(3), fc.constantFrom(...PITCHES), (measures, where, beat, pitch) => {
        const at = where % measures.length;
        fc.pre(measures[at]![beat] !== 'rest');
        const corrected = measures.map((pitches, i) => (i === at ? pitches.map((one, k) => (k === beat ? pitch : one)) : pitches));
        expect(ids(partOf(corrected))).toEqual(ids(partOf(measures)));
      }),
    );
  });
});

describe('a corrected edition laid over a stored one', () => {
  it('keeps every id when nothing was changed', () => {
    fc.assert(
      fc.property(piece, (measures) => {
        const part = partOf(measures);
        const { part: again, kept, added, removed } = realign(part, part);
        expect(ids(again)).toEqual(ids(part));
        expect([kept, added, removed]).toEqual([flat(part).length, 0, 0]);
      }),
    );
  });

  it('gives a note that says something else, and its neighbours, ids that neither edition had', () => {
    const [before, after] = [partOf(SCALE), partOf(SCALE.map((pitches, i) => (i === 1 ? ['G5', 'F#5', 'B5', 'B5'] : pitches)))];
    const { part, kept, added, removed } = realign(after, before);
    expect([kept, added, removed]).toEqual([13, 3, 3]);
    const changed = flat(part).flatMap((id, i) => (id === flat(before)[i] ? [] : [i]));
    expect(changed).toEqual([5, 6, 7]);
    expect(changed.some((i) => flat(before).includes(flat(part)[i]!))).toBe(false);
  });

  it('never gives an id of an edition before the last one to another note', () => {
    const [first, second, third] = ['C5', 'D5', 'E5'].map((pitch) => partOf(SCALE.map((pitches, i) => (i === 2 ? [pitches[0]!, pitch, pitches[2]!, pitches[3]!] : pitches))));
    const two = realign(second!, first!, 1).part;
    const three = realign(third!, two, 2).part;
    expect(flat(first!).includes(flat(three)[9]!)).toBe(false);
    expect(flat(two).includes(flat(three)[9]!)).toBe(false);
  });

  it('moves nothing when a measure unlike its neighbours is put in, but for the two notes beside it', () => {
    const { part, kept, added, removed } = realign(partOf([...SCALE.slice(0, 2), ['B5', 'C5', 'B5', 'D5'], ...SCALE.slice(2)]), partOf(SCALE));
    expect([kept, added, removed]).toEqual([14, 6, 2]);
    const before = flat(partOf(SCALE));
    expect(flat(part).filter((id) => before.includes(id))).toEqual(before.filter((_, i) => i !== 7 && i !== 8));
  });

  it('keeps count and uniqueness whatever two editions are laid over each other', () => {
    fc.assert(
      fc.property(piece, piece, (before, after) => {
        const [old, next] = [partOf(before), partOf(after)];
        const { part, kept, added, removed } = realign(next, old);
        const all = flat(part);
        expect(new Set(all).size).toBe(all.length);
        expect(kept + added).toBe(flat(next).length);
        expect(kept + removed).toBe(flat(old).length);
        expect(all.filter((id) => flat(old).includes(id)).length).toBe(kept);
      }),
    );
  });
});
