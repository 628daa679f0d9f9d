import { describe, expect, it } from 'vitest';
import { turnKind, turnRests } from '../../../core/print/turns.ts';
import { partOf } from '../../support/partBuilder.ts';

describe('the silence around a barline', () => {
  it('is counted in seconds of the tempo in force, before and after', () => {
    const rests = turnRests(partOf('{q=60} C5:2 r:2 | r:1 C5:3 | {q=120} r:4 | r:4 | C5:4'), 90);
    expect(rests.get(1)).toEqual({ before: 2, after: 1 });
    expect(rests.get(2)).toEqual({ before: 0, after: 4 });
    expect(rests.get(3)).toEqual({ before: 2, after: 2 });
  });

  it('takes the assumed tempo where the part gives none', () => {
    expect(turnRests(partOf('C5:2 r:2 | C5:4'), 120).get(1)).toEqual({ before: 1, after: 0 });
  });

  it('counts every voice: one that sounds leaves no silence', () => {
    expect(turnRests(partOf('{q=60} C5:2 r:2 && C4:4 | C5:4'), 90).get(1)).toEqual({ before: 0, after: 0 });
  });

  it('before the first note begins at the beginning', () => {
    expect(turnRests(partOf('{q=60} r:4 | r:2 C5:2'), 90).get(1)).toEqual({ before: 4, after: 2 });
  });

  it('a note that lasts into the next measure leaves none after it either', () => {
    const part = partOf('{q=60} C5:4 | r:4');
    part.measures[0]!.notes[0]!.duration = 6;
    expect(turnRests(part, 90).get(1)).toEqual({ before: 0, after: 0 });
  });

  it('cues are silence', () => {
    const part = partOf('{q=60} C5:4 | C5:4 | C5:4');
    part.measures[1]!.notes[0]!.cue = true;
    expect(turnRests(part, 90).get(1)).toEqual({ before: 0, after: 4 });
  });
});

describe('a turn', () => {
  it.each([[2, 0, 'good'], [0.9, 1.1, 'good'], [0.75, 0, 'hurried'], [0, 1.9, 'hurried'], [0.4, 0.3, 'none'], [0, 0, 'none']] as const)('with %d s before and %d s after is %s', (before, after, kind) => expect(turnKind({ before, after })).toBe(kind));
});
