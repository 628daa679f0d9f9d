import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bowEvents } from '../../../core/bowing/events.ts';
import { strokesOf } from '../../../core/bowing/strokes.ts';
import { seatMarks } from '../../../core/check/seatMarks.ts';
import { playedAnywhere } from '../../../core/matching/anywhere.ts';
import { carryBowing } from '../../../core/matching/carryBowing.ts';
import { playedTogether } from '../../../core/matching/together.ts';
import type { Mark, MarkValue } from '../../../core/music/mark.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import { partOf } from '../../support/partBuilder.ts';
import { marksOf, type ShortMark } from '../check/ruleTable.ts';

const seats = seatsFor(4);
const down = { kind: 'bow', bow: 'down' } as const;
const up = { kind: 'bow', bow: 'up' } as const;
const split = { kind: 'slur', slur: 'split' } as const;
const join = { kind: 'slur', slur: 'join' } as const;
const change = (after: number | string): MarkValue => ({ kind: 'change', after });

/** From one line onto another that is the same music at the same time. */
function carried(from: string, marks: ShortMark[], to: string, standing: ShortMark[] = []) {
  const [a, b] = [partOf(from), partOf(to)];
  const [run] = playedTogether(a, b, { unison: 2, rhythm: 1000 });
  const { marks: made, left } = carryBowing({ part: a, marks: marksOf(marks), seats }, { part: b, marks: marksOf(standing), seats }, run!);
  return { marks: made.map(({ note, value }) => [note, value]), left };
}

const line = 'D5:1( E5:1 F5:1 G5:1) | A5:1 G5:1 F5:2';
const octave = 'D4:1( E4:1 F4:1 G4:1) | A4:1 G4:1 F4:2';

describe('a bowing carried onto the same music', () => {
  it('takes signs, retakes, hooks and slurs along', () => {
    const marks: ShortMark[] = [['m1n0', down], ['m1n2', split], ['m2n0', { kind: 'retake' }], ['m2n1', { kind: 'hooked' }]];
    expect(carried(line, marks, octave)).toEqual({ marks: [['m1n0', down], ['m2n0', { kind: 'retake' }], ['m2n1', { kind: 'hooked' }], ['m1n2', split]], left: [] });
  });

  it('marks nothing that stands there already', () => {
    expect(carried(line, [['m1n0', down], ['m1n2', split]], octave, [['m1n0', down], ['m1n2', split]])).toEqual({ marks: [], left: [] });
  });

  it('takes printed signs and slurs along too', () => {
    expect(carried('D5:1<up>( E5:1) F5:1 G5:1', [], 'D4:1 E4:1 F4:1( G4:1)')).toEqual({ marks: [['m1n0', up], ['m1n0', join], ['m1n3', split]], left: [] });
  });

  it('rubs out what was marked otherwise', () => {
    expect(carried(line, [], octave, [['m1n2', split], ['m2n1', up]])).toEqual({ marks: [['m2n1', { kind: 'none', slot: 'bow' }], ['m1n2', { kind: 'none', slot: 'slur' }]], left: [] });
  });

  it('finds the place of a change in a note that is tied otherwise', () => {
    expect(carried('D5:4 | E5:4', [['m1n0', change(2)], ['m1n0', change(3)]], 'D4:2~ D4:2 | E4:4')).toEqual({ marks: [['m1n1', change(1)], ['m1n1', split]], left: [] });
    expect(carried('D5:2~ D5:2 | E5:4', [['m1n1', split]], 'D4:4 | E4:4')).toEqual({ marks: [['m1n0', change(2)]], left: [] });
  });

  it('says what was left behind, and why', () => {
    expect(carried(line, [['m1n2', split, ['1i']]], octave).left).toEqual([{ note: 'm1n2', why: 'seats' }]);
    expect(carried(line, [['m1n0', down]], `{pizz} ${octave}`)).toEqual({ marks: [], left: [{ note: 'm1n0', why: 'plucked' }] });
    expect(carried('D5:1 ^C5:1 E5:1 F5:1', [['m1n1', up]], 'D4:1 E4:1 F4:1').left).toEqual([{ note: 'm1n1', why: 'grace' }]);
    expect(carried('C5:1( D5:1) E5:1 F5:1', [], 'G4:1 D4:1 E4:1 F4:1')).toEqual({ marks: [], left: [{ note: 'm1n1', why: 'edge' }] });
    expect(carried('D5:1 E5:1 F5:1 G5:1', [['m1n2', join]], 'D4:1 E4:1 F4:1 C4:1').left).toEqual([{ note: 'm1n2', why: 'edge' }]);
    expect(carried('D5:2~ D5:2 | E5:4', [['m1n1', up]], 'D4:4 | E4:4').left).toEqual([{ note: 'm1n0', why: 'held' }]);
  });

  it('goes from one place of a part to another', () => {
    const part = partOf('D5:1 E5:1 F5:1 G5:1 | r:4 | D5:1 E5:1 F5:1 G5:1');
    const [run] = playedAnywhere(part, part, { unison: 4, rhythm: 1000 });
    const marked = { part, marks: marksOf([['m1n0', up], ['m1n1', join]]), seats };
    expect(carryBowing(marked, marked, run!)).toEqual({ marks: [{ note: 'm3n0', value: up }, { note: 'm3n1', value: join }], left: [] });
  });
});

const slurs = fc.array(fc.boolean(), { minLength: 8, maxLength: 8 });
const written = (pitches: string, bound: readonly boolean[]) =>
  Array.from(pitches, (pitch, i) => `${pitch}4:1${bound[i] ? ')' : ''}${bound[i + 1] && !bound[i] ? '(' : ''}`).map((note, i) => (bound[i] && bound[i + 1] ? note.replace(')', '') : note)).join(' ');
const value = fc.constantFrom<MarkValue>(down, up, split, join, { kind: 'retake' }, { kind: 'hooked' }, change('1/2'));
const marks = fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 7 }), value), { maxLength: 6, selector: ([note, { kind }]) => `${note} ${kind}` }).map((all) => all.map(([note, mark]): Mark => ({ note: `m1n${note}`, value: mark })));

/** The bows as they can be heard and seen: where each begins, its sign, and what stands before it. */
function bowsIn(part: ReturnType<typeof partOf>, inForce: readonly Mark[]) {
  const { forAll } = seatMarks(part, inForce, seats);
  return strokesOf(bowEvents(part, tempoMap(part, 90))[0]!, forAll).map(({ begins: { event, at }, direction, retake, hooked }) => ({ event, at, direction, retake, hooked }));
}

describe('carried whole, the bows are the same', () => {
  it('with any slurs and marks on both sides, unless something is said to be left behind', () => {
    let whole = 0;
    fc.assert(
      fc.property(slurs, slurs, marks, marks, (slursA, slursB, marksA, marksB) => {
        const [a, b] = [partOf(written('CDEFGABC', [false, ...slursA.slice(1), false])), partOf(written('CDEFGABC', [false, ...slursB.slice(1), false]))];
        const [run] = playedTogether(a, b, { unison: 8, rhythm: 1000 });
        const { marks: made, left } = carryBowing({ part: a, marks: marksA, seats }, { part: b, marks: marksB, seats }, run!);
        if (left.length) return;
        whole += 1;
        expect(bowsIn(b, [...marksB, ...made])).toEqual(bowsIn(a, marksA));
      }),
      { numRuns: 250, seed: 5 },
    );
    expect(whole).toBeGreaterThan(75);
  });
});
