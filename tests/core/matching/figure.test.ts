import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figuresLike, type Figure } from '../../../core/matching/figure.ts';
import { partOf } from '../../support/partBuilder.ts';

const told = ({ likeness, by, run }: Figure) => ({ likeness, by, in: run.b.from, notes: run.notes.map(([, note]) => note) });
const figure = (text: string, notes: readonly string[]) => figuresLike(partOf(text), notes).map(told);

describe('a figure found again in its part', () => {
  it('is found at the same pitch, moved by semitones, and moved by steps of the staff', () => {
    // C D E: a tone and a tone. F G A: the same a fourth higher. D E F: the same steps, but a tone and a semitone.
    expect(figure('C4:1 D4:1 E4:2 | F4:1 G4:1 A4:2 | D4:1 E4:1 F4:2 | C4:1 D4:1 E4:2', ['m1n0', 'm1n1', 'm1n2'])).toEqual([
      { likeness: 'transposed', by: 5, in: 2, notes: ['m2n0', 'm2n1', 'm2n2'] },
      { likeness: 'steps', by: 2, in: 3, notes: ['m3n0', 'm3n1', 'm3n2'] },
      { likeness: 'same', by: 0, in: 4, notes: ['m4n0', 'm4n1', 'm4n2'] },
    ]);
  });

  it('is another figure in another rhythm, upside down, or with a rest inside', () => {
    expect(figure('C4:1 D4:1 E4:2 | C4:2 D4:1 E4:1 | E4:1 D4:1 C4:2 | C4:1 r:1 D4:1 E4:1', ['m1n0', 'm1n1', 'm1n2'])).toEqual([]);
  });

  it('begins anywhere in a measure and runs over barlines; the silence before it does not count', () => {
    expect(figure('C4:1 D4:1 E4:2 | r:3 G4:1 | A4:1 B4:2 r:1', ['m1n0', 'm1n1', 'm1n2'])).toEqual([{ likeness: 'transposed', by: 7, in: 2, notes: ['m2n0', 'm3n0', 'm3n1'] }]);
  });

  it('never overlaps itself, nor do its places', () => {
    expect(figure('C4:1 C4:1 C4:1 C4:1 | C4:1 C4:1 C4:1 r:1', ['m1n0', 'm1n1', 'm1n2'])).toEqual([{ likeness: 'same', by: 0, in: 1, notes: ['m1n3', 'm2n0', 'm2n1'] }]);
  });

  it('one note is no figure, and notes that are not there are none', () => {
    expect([figure('C4:1 C4:1 C4:1 C4:1', ['m1n0']), figure('C4:4', []), figure('C4:1 D4:3', ['gone', 'too'])]).toEqual([[], [], []]);
  });

  it('law: any run of notes written twice with a rest between is found, at the interval it was moved by', () => {
    const STEPS = ['C', 'D', 'E', 'F', 'G', 'A', 'B'];
    const note = fc.tuple(fc.constantFrom(...STEPS), fc.integer({ min: 3, max: 5 }), fc.constantFrom('1', '1/2', '3/2'));
    fc.assert(
      fc.property(fc.array(note, { minLength: 2, maxLength: 8 }), fc.constantFrom(-1, 0, 1), (notes, octaves) => {
        const write = (by: number) => notes.map(([step, octave, length]) => `${step}${octave + by}:${length}`).join(' ');
        const found = figuresLike(partOf(`${write(0)} | r:7 ${write(octaves)}`), notes.map((_, i) => `m1n${i}`));
        return found.some(({ run, by }) => run.b.from === 2 && run.notes.length === notes.length && run.notes[0]![1] === 'm2n0' && by === 12 * octaves);
      }),
    );
  });
});
