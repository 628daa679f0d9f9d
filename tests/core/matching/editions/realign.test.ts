import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Part } from '../../../core/music/part.ts';
import { realign } from '../../../core/music/realign.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { note, scoreText } from '../../support/scoreText.ts';

const PITCHES = ['C5', 'D5', 'E5', 'F#5', 'G5', 'A5', 'B5'] as const;

/** A measure of four quarters, some of them rests. */
const measure = fc.array(fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...PITCHES) }, { weight: 1, arbitrary: fc.constant('rest') }), { minLength: 4, maxLength: 4 });
const piece = fc.array(measure, { minLength: 3, maxLength: 12 });

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

  it('keeps all old ids, in order, when a measure is put in, and gives the new notes ids of their own', () => {
    fc.assert(
      fc.property(piece, measure, fc.nat(), (measures, fresh, where) => {
        const at = where % (measures.length + 1);
        const old = partOf(measures);
        const { part, kept, added, removed } = realign(partOf([...measures.slice(0, at), fresh, ...measures.slice(at)]), old);
        const all = flat(part);
        expect(new Set(all).size).toBe(all.length);
        expect([kept, added, removed]).toEqual([flat(old).length, 4, 0]);
        const before = new Set(flat(old));
        expect(all.filter((id) => before.has(id))).toEqual(flat(old));
      }),
    );
  });

  it('loses only the ids of a measure that is taken out', () => {
    fc.assert(
      fc.property(piece, fc.nat(), (measures, where) => {
        const at = where % measures.length;
        const old = partOf(measures);
        const { part, kept, added, removed } = realign(partOf(measures.toSpliced(at, 1)), old);
        expect([kept, added, removed]).toEqual([flat(old).length - 4, 0, 4]);
        expect(flat(part).every((id) => flat(old).includes(id))).toBe(true);
      }),
    );
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
