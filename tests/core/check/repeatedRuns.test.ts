import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bowEvents } from '../../../core/bowing/events.ts';
import { repeatedRuns } from '../../../core/check/repeatedRuns.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import { partOf } from '../../support/partBuilder.ts';

const voiceOf = (pitches: readonly string[]) => {
  const part = partOf(pitches.map((pitch) => `${pitch}4:1`).join(' '));
  return bowEvents(part, tempoMap(part, 90))[0]!;
};

const music = fc.array(fc.constantFrom('A', 'B', 'C'), { minLength: 1, maxLength: 40 });

describe('runs that come again', () => {
  it('are the same notes twice, as long as asked for, as long as they go, and apart', () => {
    fc.assert(
      fc.property(music, fc.integer({ min: 2, max: 5 }), (pitches, least) => {
        let free = 0;
        for (const { first, second, length } of repeatedRuns(voiceOf(pitches), least)) {
          expect(length).toBeGreaterThanOrEqual(least);
          expect(first + length).toBeLessThanOrEqual(second);
          expect(second).toBeGreaterThanOrEqual(free);
          expect(pitches.slice(first, first + length)).toEqual(pitches.slice(second, second + length));
          expect(first + length === second || pitches[first + length] !== pitches[second + length] || second + length === pitches.length).toBe(true);
          free = second + length;
        }
      }),
      { numRuns: 200 },
    );
  });

  it('none is missed: outside the runs found, no stretch of the least length sounded before, clear of its model', () => {
    fc.assert(
      fc.property(music, fc.integer({ min: 2, max: 5 }), (pitches, least) => {
        const covered = new Set(repeatedRuns(voiceOf(pitches), least).flatMap(({ second, length }) => Array.from({ length }, (_, i) => second + i)));
        for (let at = 0; at + least <= pitches.length; at += 1) {
          const opening = pitches.slice(at, at + least).join();
          const isModelled = Array.from({ length: Math.max(0, at - least + 1) }, (_, i) => i).some((first) => !covered.has(first) && pitches.slice(first, first + least).join() === opening);
          const isFree = Array.from({ length: least }, (_, i) => at + i).every((place) => !covered.has(place));
          expect(isModelled && isFree).toBe(false);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('other lengths are other music', () => {
    const part = partOf('A4:1 B4:1 C5:1 A4:2 B4:2 C5:2');
    expect(repeatedRuns(bowEvents(part, tempoMap(part, 90))[0]!, 3)).toEqual([]);
  });
});
