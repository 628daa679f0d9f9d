import { describe, expect, it } from 'vitest';
import { besideFor } from '../../../client/beside/besideFor.ts';
import type { OtherPart } from '../../../client/beside/messages.ts';
import { cutRun, turnedRun } from '../../../client/views/stand/beside/cutRun.ts';
import { carried } from '../../../client/views/stand/beside/takeBowing.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';

const MINE = partOf('{f} {q=100} D5:1 E5:1 F5:1 G5:1 | A5:1 B5:1 C6:1 D6:1 | r:4 | E4:4');
const THEIRS = partOf('{f} {q=100} D4:1 E4:1 F4:1 G4:1 | A4:1 B4:1 C5:1 D5:1 | r:4 | C3:2 D3:2');
const other = (marks: readonly Mark[] = []): OtherPart => ({ id: 'ii', section: 'Violin II', part: THEIRS, marks, seats: seatsFor(2), settings: {} });
const beside = (others: OtherPart[]) => besideFor(MINE, { others }, () => {});
const sides = (marks: readonly Mark[]) => [{ part: THEIRS, marks, seats: seatsFor(2) }, { part: MINE, marks: [], seats: seatsFor(2) }] as const;

describe('the other sections’ bows', () => {
  it('come with the notes they share with this part, theirs first, and section after section', () => {
    const sizes: number[] = [];
    const { sections } = besideFor(MINE, { others: [other(), { ...other(), id: 'va' }] }, (soFar) => sizes.push(soFar.sections.length));
    expect(sections[0]!.same.map(({ likeness, notes }) => [likeness, notes.length])).toEqual([['unison', 8]]);
    expect(sections[0]!.same[0]!.notes[4]).toEqual(['m2n0', 'm2n0']);
    expect(sizes).toEqual([1, 2]);
  });

  it('are theirs as marked: a sign turns the bows after it', () => {
    const directions = (marks: Mark[]) => beside([other(marks)]).sections[0]!.hair.voices[0]!.slice(0, 4).map(({ direction, marked }) => `${direction}${marked ? ' marked' : ''}`);
    expect(directions([{ note: 'm1n0', value: { kind: 'bow', bow: 'up' } }])[0]).toBe('up marked');
    expect(directions([])[0]).toBe('down');
  });
});

describe('a bowing that is taken', () => {
  const { same } = beside([other()]).sections[0]!;

  it('of a run keeps to the notes that are wanted', () => {
    const run = cutRun(same[0]!, THEIRS, MINE, (note) => note === 'm1n2' || note === 'm2n0')!;
    expect(run.notes).toEqual([['m1n2', 'm1n2'], ['m1n3', 'm1n3'], ['m2n0', 'm2n0']]);
    expect([run.b.first, run.b.from, run.b.to]).toEqual([2, 1, 2]);
    expect(cutRun(same[0]!, THEIRS, MINE, () => false)).toBeNull();
  });

  it('puts their signs on my notes, and none outside the passage', () => {
    const marks: Mark[] = [{ note: 'm1n0', value: { kind: 'bow', bow: 'up' } }, { note: 'm2n1', value: { kind: 'bow', bow: 'down' } }];
    const [from, to] = sides(marks);
    expect(carried(from, to, same, new Set(['m2n0', 'm2n1', 'm2n2'])).marks).toContainEqual({ note: 'm2n1', value: { kind: 'bow', bow: 'down' } });
    expect(carried(from, to, same, new Set(['m2n0', 'm2n1', 'm2n2'])).marks.map(({ note }) => note)).not.toContain('m1n0');
  });

  it('is nothing where my music is not theirs', () => {
    const [from, to] = sides([]);
    expect(carried(from, to, same, new Set(['m4n0']))).toEqual({ marks: [], left: [] });
  });

  it('a run turned round twice is the same run', () => expect(turnedRun(turnedRun(same[0]!))).toEqual(same[0]));
});
