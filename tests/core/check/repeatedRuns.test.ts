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
const figures = fc.array(fc.constantFrom('A', 'B'), { minLength: 20, maxLength: 60 });

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

  it('the times between are the same notes as well, clear of the first and of the last, the latest of them first and at most eight', () => {
    let met = 0;
    fc.assert(
      fc.property(figures, fc.integer({ min: 2, max: 5 }), (pitches, least) => {
        for (const { first, second, length, between } of repeatedRuns(voiceOf(pitches), least)) {
          const opening = pitches.slice(second, second + least).join();
          const heard = Array.from({ length: second - least + 1 }, (_, i) => i).filter((at) => at > first && pitches.slice(at, at + least).join() === opening);
          expect(between.map((other) => other.first)).toEqual(heard.reverse().slice(0, 8));
          met += between.length;
          for (const other of between) {
            expect(other.length).toBeLessThanOrEqual(length);
            expect(other.first + other.length).toBeLessThanOrEqual(second);
            expect(pitches.slice(other.first, other.first + other.length)).toEqual(pitches.slice(second, second + other.length));
          }
        }
      }),
      { numRuns: 200 },
    );
    expect(met).toBeGreaterThan(200);
  });

  it('other lengths are other music', () => {
    const part = partOf('A4:1 B4:1 C5:1 A4:2 B4:2 C5:2');
    expect(repeatedRuns(bowEvents(part, tempoMap(part, 90))[0]!, 3)).toEqual([]);
  });
});
