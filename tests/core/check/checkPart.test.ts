import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPart } from '../../../core/check/checkPart.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { RULES } from '../../../core/check/registry.ts';
import type { MarkValue } from '../../../core/music/mark.ts';
import type { Part } from '../../../core/music/part.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';
import { marksOf, type ShortMark } from './ruleTable.ts';

const MUSIC = '{pp} {q=60} D5:4( | E5:4 | F5:4) | {f} D5:1 E5:1 F5:1 G5:1 | A5:1( C6:1 D6:2)';
const change = (after: number | string): MarkValue => ({ kind: 'change', after });
const MARKS: ShortMark[] = [
  ['m2n0', change(1), ['1o', '1i']],
  ['m4n0', { kind: 'bow', bow: 'down' }],
  ['m4n1', { kind: 'bow', bow: 'down' }],
  ['m4n2', { kind: 'finger', finger: 0 }],
  ['m3n0', change(0), ['2o']],
];
const check = (marks: ShortMark[], options: { part?: Part; settings?: Record<string, unknown>; players?: number } = {}): Finding[] =>
  checkPart({ part: options.part ?? partOf(MUSIC), seats: seatsFor(options.players ?? 4), marks: marksOf(marks), settings: options.settings ?? {} });
const key = ({ rule, place }: Finding): string => `${rule} ${place}`;

describe('the findings of a part', () => {
  it('come with the worst first, then the most exposed', () => {
    const weights = check(MARKS).map(({ severity }) => ['cannotPlay', 'collides', 'worthALook'].indexOf(severity));
    expect(weights.length).toBeGreaterThan(4);
    expect(weights).toEqual([...weights].sort());
    const collisions = check(MARKS).filter(({ severity }) => severity === 'collides').map(({ exposure }) => exposure);
    expect(collisions.length).toBeGreaterThan(1);
    expect(collisions).toEqual([...collisions].sort((a, b) => b - a));
  });

  it('are none for a part that is no bowed string part', () => {
    expect(check(MARKS, { part: partOf(MUSIC, { instrument: null }) })).toEqual([]);
  });

  it('say the printed number of the measure, and its place where none is printed', () => {
    const numbered = partOf('D5:1 | B4:1<0>', { numbers: ['46', '47'] });
    expect(check([], { part: numbered })[0]!.text).toContain('In measure 47 ');
    expect(check([], { part: partOf('D5:1 | B4:1<0>', { numbers: ['1', ''] }) })[0]!.text).toContain('In the 2nd measure ');
  });

  it('never change the part or the marks they are given', () => {
    const part = partOf(MUSIC);
    const before = JSON.stringify(part);
    check(MARKS, { part });
    expect(JSON.stringify(part)).toBe(before);
  });

  it('take settings as they are and refuse those of wrong form', () => {
    expect(check([['m1n0', change(1)]], { settings: { unknownToTheChecker: 1 } })).toEqual(check([['m1n0', change(1)]]));
    expect(() => check([], { settings: { assumedTempo: 'fast' } })).toThrow();
  });

  it('are the same for the same input, whole, within bounds, each place once, whatever the marks', () => {
    const value: fc.Arbitrary<MarkValue> = fc.constantFrom<MarkValue>({ kind: 'finger', finger: 0 }, { kind: 'finger', finger: 1 }, { kind: 'finger', finger: 4 }, { kind: 'string', string: 1 }, { kind: 'string', string: 4 }, { kind: 'bow', bow: 'down' }, { kind: 'bow', bow: 'up' }, change(0), change('1/2'), change(3), { kind: 'retake' }, { kind: 'hooked' }, { kind: 'slur', slur: 'join' }, { kind: 'slur', slur: 'split' }, { kind: 'harmonic', harmonic: 'natural' }, { kind: 'none', slot: 'change' });
    const ids = partOf(MUSIC).measures.flatMap((measure) => measure.notes.map((note) => note.id));
    const mark = fc.tuple(fc.constantFrom(...ids), value, fc.constantFrom<string[] | undefined>(undefined, ['1o'], ['1i', '2i'], ['2o'])).map(([note, what, seats]): ShortMark => [note, what, seats]);
    const known = new Set(RULES.map((rule) => rule.id));
    let found = 0;
    fc.assert(
      fc.property(fc.array(mark, { minLength: 3, maxLength: 16 }), (marks) => {
        const findings = check(marks);
        found += findings.length;
        expect(check(marks)).toEqual(findings);
        expect(new Set(findings.map(key)).size).toBe(findings.length);
        for (const finding of findings) {
          expect(known.has(finding.rule)).toBe(true);
          expect(finding.exposure).toBeGreaterThanOrEqual(0);
          expect(finding.exposure).toBeLessThanOrEqual(1);
          expect(finding.notes.every((id) => ids.includes(id))).toBe(true);
          expect(finding.text).not.toMatch(/[{}]|undefined|NaN/);
        }
      }),
      { numRuns: 400, seed: 20261125 },
    );
    expect(found).toBeGreaterThan(400);
  });
});

describe('the place and the fingerprint of a finding', () => {
  const collision = (findings: Finding[]) => findings.find(({ rule }) => rule === 'desk/partners-change-together')!;
  const before = collision(check(MARKS));

  it('stay as they are after an edit elsewhere', () => {
    const after = collision(check([...MARKS, ['m5n0', { kind: 'finger', finger: 1 }], ['m1n0', change(2), ['2i']]]));
    expect([after.place, after.fingerprint]).toEqual([before.place, before.fingerprint]);
  });

  it('the fingerprint changes with a mark there, the place does not', () => {
    const after = collision(check([...MARKS, ['m2n0', { kind: 'finger', finger: 2 }]]));
    expect(after.place).toBe(before.place);
    expect(after.fingerprint).not.toBe(before.fingerprint);
  });

  it('the fingerprint changes with the music there', () => {
    const after = collision(check(MARKS, { part: partOf(MUSIC.replace('E5:4', 'Eb5:4')) }));
    expect(after.place).toBe(before.place);
    expect(after.fingerprint).not.toBe(before.fingerprint);
  });

  it('do not depend on the order in which marks were made', () => {
    const reversed: ShortMark[] = [...MARKS.slice(0, 1), ['m2n0', { kind: 'finger', finger: 2 }]];
    expect(collision(check([...reversed].reverse()))).toEqual(collision(check(reversed)));
  });

  it('a mark of another seat there leaves the finding of a desk alone', () => {
    const after = collision(check([...MARKS, ['m2n0', { kind: 'finger', finger: 2 }, ['2i']]]));
    expect(after.fingerprint).toBe(before.fingerprint);
  });
});
