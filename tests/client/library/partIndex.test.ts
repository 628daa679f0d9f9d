import { describe, expect, it } from 'vitest';
import { numberOf } from '../../../core/music/printedNumber.ts';
import { shareOfNote } from '../../../core/music/shareOfNote.ts';
import { findMeasure, indexPart, moveInside } from '../../../client/library/partIndex.ts';
import { smallPart } from '../../support/smallPart.ts';

const part = smallPart();
const index = indexPart(part);

describe('look-ups of a part', () => {
  it('walks every note that can carry marks, and no rest', () => {
    const [first, ...rest] = part.measures;
    const withRest = { ...part, measures: [{ ...first!, notes: [{ ...first!.notes[0]!, rest: true as const }, ...first!.notes.slice(1)] }, ...rest] };
    expect(indexPart(withRest).walk).toEqual(index.walk.slice(1));
    expect(indexPart(withRest).notes.get('P1n2')!.position).toBe(1);
  });

  it('finds a measure by its printed number before its place in the part, and by its letter', () => {
    expect(findMeasure(index, '2')).toBe(3);
    expect(findMeasure(index, '4')).toBe(4);
    expect(findMeasure(index, '99')).toBeNull();
    const lettered = { ...part, measures: part.measures.map((measure) => (measure.ordinal === 2 ? { ...measure, rehearsal: 'C' } : measure)) };
    expect(findMeasure(indexPart(lettered), ' c ')).toBe(2);
  });

  it('names a measure by its place where nothing is printed', () => {
    expect(numberOf({ ...part.measures[2]!, number: '' })).toBe('3');
  });

  it('a note under a slur is known, its first is not', () => {
    const slurred = indexPart({ ...part, slurs: [{ from: 'P1n2', to: 'P1n4' }] });
    expect([...slurred.underSlur]).toEqual(['P1n3', 'P1n4']);
  });

  it('a change moves by steps and stays inside its note', () => {
    const note = { ...part.measures[0]!.notes[0]!, duration: 2 };
    expect(moveInside('1/2', '1/2', 1, note)).toBe(1);
    expect(moveInside('3/2', '1/2', 1, note)).toBe('3/2');
    expect(moveInside(0, '1/2', -1, note)).toBe(0);
    expect([shareOfNote(1, note), shareOfNote(0, note), shareOfNote(1, { ...note, duration: 0 })]).toEqual([0.5, 0, 0]);
  });
});
