import { describe, expect, it } from 'vitest';
import { canonical } from '../../../core/agreement/canonical.ts';
import { factsOf } from '../../../core/agreement/facts.ts';
import { run } from '../../../core/agreement/run.ts';
import { emptyState } from '../../../core/agreement/state.ts';
import type { Measure, Note, Part } from '../../../core/music/part.ts';
import { id, PLAYER, slip } from './section.ts';

const note = (name: string, over: Partial<Note> = {}): Note => ({ id: name, onset: 0, duration: 1, voice: '1', index: 0, slurs: [], ties: [], technical: [], articulations: [], ornaments: [], dynamic: null, tempo: null, ...over });
const measure = (ordinal: number, number: string, notes: Note[]): Measure => ({ ordinal, number, start: 0, length: 4, time: null, fifths: null, words: [], wedges: [], notes });
const part: Part = {
  id: 'P1',
  name: 'Viola',
  instrument: 'viola',
  transposition: 0,
  slurs: [],
  measures: [measure(1, 'X1', [note('a'), note('r', { rest: true })]), measure(2, '1', [note('g', { grace: true }), note('c', { chord: true }), note('h', { hidden: true })])],
};

describe('the facts of a part', () => {
  it('hold every note in document order with its ordinal, whatever number is printed, and no rests', () => {
    const facts = factsOf(part, ['1o']);
    expect([...facts.notes]).toEqual([['a', 1], ['g', 2], ['c', 2], ['h', 2]]);
    expect(facts).toMatchObject({ measures: 2, seats: ['1o'] });
  });

  it('let no mark stand on a rest', () => {
    const propose = (on: string) => run(emptyState(), { operation: id(1), name: 'propose', input: slip(2, { marks: [{ note: on, value: { kind: 'retake' } }] }) }, PLAYER, factsOf(part, []));
    expect(propose('a').ok).toBe(true);
    expect(propose('r')).toMatchObject({ ok: false, refusal: { code: 'UNKNOWN_NOTE' } });
  });
});

describe('canonical text', () => {
  it('is one text for equal values, and another for others', () => {
    expect(canonical({ b: [{ d: 1, c: 2 }], a: null })).toBe('{"a":null,"b":[{"c":2,"d":1}]}');
    expect(canonical({ a: null, b: [{ c: 2, d: 1, e: undefined }] })).toBe('{"a":null,"b":[{"c":2,"d":1}]}');
    expect(canonical([1, 2])).not.toBe(canonical([2, 1]));
  });
});
