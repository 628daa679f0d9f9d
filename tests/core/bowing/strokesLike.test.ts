import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { strokesOf } from '../../../core/bowing/strokes.ts';
import { strokesLike } from '../../../core/bowing/strokesLike.ts';
import { seatMarks } from '../../../core/check/seatMarks.ts';
import type { MarkValue } from '../../../core/music/mark.ts';
import { partOf } from '../../support/partBuilder.ts';
import { marksOf, type ShortMark } from '../check/ruleTable.ts';
import { voicesIn } from './bowing.ts';

const TOKENS = ['D5:1', 'D5:1', 'D5:1(', 'E5:1', 'F5:1)', 'E5:2', 'E5:2~', 'r:1', '^C5:1', 'G5:1*', 'A5:1<up>', '{pizz} B4:1 {arco}'];
const value: fc.Arbitrary<MarkValue> = fc.oneof(
  fc.constantFrom<MarkValue>({ kind: 'retake' }, { kind: 'hooked' }, { kind: 'slur', slur: 'split' }, { kind: 'slur', slur: 'join' }, { kind: 'bow', bow: 'up' }, { kind: 'bow', bow: 'down' }, { kind: 'none', slot: 'bow' }, { kind: 'none', slot: 'change' }),
  fc.constantFrom(0, '1/2', 1, '3/2').map((after): MarkValue => ({ kind: 'change', after })),
);
const marksFor = (seats: string[] | undefined): fc.Arbitrary<ShortMark[]> =>
  fc.array(fc.tuple(fc.nat(11), value).map(([note, mark]): ShortMark => [`m1n${note}`, mark, seats]), { maxLength: 6 });

describe('bows worked out from others', () => {
  it('are those worked out from nothing, whatever the signs', () => {
    const music = fc.array(fc.constantFrom(...TOKENS), { minLength: 1, maxLength: 12 }).map((tokens) => partOf(tokens.join(' ')));
    fc.assert(
      fc.property(music, marksFor(undefined), marksFor(['1i']), (part, forAll, own) => {
        const { forAll: common, groups } = seatMarks(part, marksOf([...forAll, ...own]), ['1o', '1i']);
        for (const voice of voicesIn(part)) {
          const base = strokesOf(voice, common);
          for (const group of groups) {
            const differing = voice.flatMap((event, index) => (group.own.has(event.head.id) ? [index] : []));
            expect(strokesLike(base, voice, group.marksOn, differing)).toEqual(strokesOf(voice, group.marksOn));
          }
        }
      }),
      { numRuns: 2000, seed: 20261125 },
    );
  });

  it('keep the bows that nothing touches', () => {
    const part = partOf('D5:1 E5:1 F5:1 G5:1 A5:1 B5:1 C6:1');
    const voice = voicesIn(part)[0]!;
    const base = strokesOf(voice, () => ({ changes: [] }));
    const like = strokesLike(base, voice, (id) => ({ changes: [], ...(id === 'm1n0' ? { bow: 'up' as const } : {}) }), [0]);
    expect(like[0]!.direction).toBe('up');
    expect(like.slice(2).every((stroke, index) => stroke === base[index + 2])).toBe(true);
  });
});
