import { describe, expect, it } from 'vitest';
import { checkPart } from '../../../core/check/checkPart.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';
import { marksOf, type ShortMark } from './ruleTable.ts';

const down = { kind: 'bow', bow: 'down' } as const;
const up = { kind: 'bow', bow: 'up' } as const;

const part = partOf('{q=60} D4:1 E4:1 F4:1 G4:1 | A4:1 G4:1 F4:2');
const firsts = partOf('{q=60} D5:1 E5:1 F5:1 G5:1 | A5:1 G5:1 F5:2');
const seats = seatsFor(4);

/** What is found about bows across sections, each time with the same two parts in hand. */
const found = (own: ShortMark[], theirs: ShortMark[], settings: Record<string, unknown> = {}): Finding[] =>
  checkPart({ part, seats, marks: marksOf(own), settings, others: [{ section: 'Violin 1', part: firsts, marks: marksOf(theirs), seats }] }).filter(({ rule }) => rule === 'section/unison-bowed-against');
const placed = (findings: Finding[]) => findings.map(({ message, notes }) => `${message} ${notes[0]}`);

describe('sections compared again and again', () => {
  it('follow every change of the marks of either', () => {
    expect(placed(found([['m1n0', up]], [['m1n0', down]]))).toEqual(['unison m1n0']);
    expect(placed(found([['m1n0', up]], [['m1n0', up]]))).toEqual([]);
    expect(placed(found([['m1n0', up]], [['m2n0', down]]))).toEqual(['counted m2n0']);
    expect(placed(found([], [['m2n0', down]]))).toEqual([]);
  });

  it('follow every change of the settings', () => {
    expect(placed(found([['m1n0', up]], [['m2n0', down]], { strokesCounted: 2 }))).toEqual([]);
    expect(placed(found([['m1n0', up]], [['m2n0', down]], { strokesCounted: 4 }))).toEqual(['counted m2n0']);
    expect(placed(found([['m1n0', up]], [['m1n0', down]], { unisonNotes: 8 }))).toEqual([]);
  });

  it('are the same place with another fingerprint when both bows there are turned from afar', () => {
    const [once] = found([['m1n0', down]], [['m2n0', up]]);
    const [turned] = found([['m1n0', up]], [['m2n0', down]]);
    expect([once!.place, turned!.place]).toEqual(['counted:m2n0', 'counted:m2n0']);
    expect(once!.fingerprint).not.toBe(turned!.fingerprint);
    expect(found([['m1n0', down]], [['m2n0', up]])[0]!.fingerprint).toBe(once!.fingerprint);
  });
});
