import { describe, expect, it } from 'vitest';
import type { HairAnswer, HairBow } from '../../../client/bowing/messages.ts';
import { besideSentences } from '../../../client/views/stand/beside/besideSentences.ts';
import { bowLane, measuresAt, together, type LaneBow } from '../../../client/views/stand/beside/bowLanes.ts';
import type { Geometry } from '../../../core/engraving/geometry.ts';
import type { Run } from '../../../core/matching/run.ts';

const bow = (begins: number, ends: number, direction: 'down' | 'up', measure = 1): HairBow => ({ notes: ['a'], measure, direction, begins, ends, from: 0, to: 100, speed: 1, pace: 'usual', short: null, marked: false, shared: false, reason: '' });
/** Two measures of 4 s, then one of 2 s. */
const hair = (bows: HairBow[]): HairAnswer => ({ hair: 650, voices: [bows], barlines: [{ ordinal: 1, second: 0 }, { ordinal: 2, second: 4 }, { ordinal: 3, second: 8 }], end: 10 });
const geometry = { width: 100, measures: [{ ordinal: 2, x0: 0, x1: 50 }, { ordinal: 3, x0: 50, x1: 100 }], notes: {} } as unknown as Geometry;
const lane = (bows: HairBow[]) => bowLane(hair(bows), geometry, (measures) => (measures - 2) * 50);

describe('bows of another section over my notes', () => {
  it('stand where they are in their measure, whatever the tempo', () => expect([0, 2, 4, 8, 9].map((second) => measuresAt(hair([]), second))).toEqual([1, 1.5, 2, 3, 3.5]));

  it('only those that sound in the line are shown, cut at its ends; one that began before has no sign', () => {
    const shown = lane([bow(0, 4, 'down'), bow(3, 6, 'up'), bow(6, 9, 'down'), bow(9, 10, 'up')]);
    expect(shown.map(({ x0, x1, begins }) => [x0, x1, begins])).toEqual([[0, 25, false], [25, 75, true], [75, 100, true]]);
  });

  it('are compared with mine only where both begin together', () => {
    const mine = lane([bow(4, 6, 'down'), bow(6, 8, 'up'), bow(8, 10, 'down')]);
    const theirs = lane([bow(4, 7, 'down'), bow(7, 8, 'up'), bow(8, 10, 'up')]);
    const { both, against } = together(mine, theirs);
    expect([both, against.map(({ bow }) => bow.begins)]).toEqual([2, [8]]);
  });
});

describe('the other sections in words', () => {
  const against = (n: number, measures: number[]) => ({ both: n, against: measures.map((measure) => ({ bow: bow(0, 1, 'up', measure) }) as LaneBow) });
  const run = (likeness: Run['likeness'], from: number, to: number): Run => ({ likeness, a: { line: 0, first: 0, from, to }, b: { line: 0, first: 0, from, to }, notes: [] });
  const say = (pairs: ReturnType<typeof against>, same: Run[] = []) => besideSentences(pairs, { same }, 10, 14, String).join(' ');

  it('say how many bows go with mine and against it, and where', () => {
    expect(say(against(0, []))).toBe('No bow begins together with one of mine here.');
    expect(say(against(3, []))).toBe('Three bows begin together with mine and go the same way.');
    expect(say(against(1, [12]))).toBe('One bow begins together with mine and goes the other way, in measure 12.');
    expect(say(against(5, [12, 12, 13]))).toBe('Five bows begin together with mine; three of them go the other way, in measures 12, 13.');
  });

  it('say where the music is the same, in this line only', () => {
    expect(say(against(0, []), [run('unison', 8, 12), run('unison', 20, 22), run('rhythm', 13, 20)])).toMatch(/here\. The same notes as mine in measures 10 to 12\. My rhythm with other notes in measures 13 to 14\.$/);
  });

  it('do not tell a rhythm again where it is a unison', () => expect(say(against(0, []), [run('unison', 8, 20), run('rhythm', 8, 30)])).not.toMatch(/rhythm/));
});
