import { describe, expect, it } from 'vitest';
import { changeSentence } from '../../../client/views/changeSentence.ts';
import { byDesk, byMeasure } from '../../../client/views/folder/since/sinceRows.ts';
import type { SinceView } from '../../../core/agreement/wire/overview.ts';
import { seatsFor } from '../../../core/music/seat.ts';

type Change = SinceView['changes'][number];
const change = (measure: number, position: number, seats: Change['seats'], over: Partial<Change> = {}): Change => ({ measure, number: String(measure), note: `${measure}.${position}`, position, seats, gone: [], fresh: [{ kind: 'bow', bow: 'up' }], ...over });

describe('changes since the parts went out', () => {
  it('are said as what stands instead of what, and for whom', () => {
    expect(changeSentence(change(12, 3, 'all', { gone: [{ kind: 'finger', finger: 1 }], fresh: [{ kind: 'finger', finger: 2 }] }))).toBe('note 3: finger 2 instead of finger 1');
    expect(changeSentence(change(12, 1, ['2i'], { gone: [{ kind: 'finger', finger: 1 }], fresh: [] }))).toBe('note 1: no more finger 1 (desk 2 inside)');
    expect(changeSentence(change(12, 0, 'all'))).toBe('up-bow');
  });

  it('stand measure by measure', () => {
    expect(byMeasure([change(3, 1, 'all'), change(3, 2, ['1o']), change(9, 1, 'all')]).map(({ number, changes }) => [number, changes.length])).toEqual([['3', 2], ['9', 1]]);
  });

  it('go to the desks they are for: one seat of a desk is named, both are not, a desk without changes gets no slip', () => {
    const slips = byDesk([change(3, 1, ['1i', '2o', '2i']), change(9, 1, ['3o'])], seatsFor(8));
    expect(slips.map(({ desk, changes }) => [desk, changes.map(({ measure, seats }) => [measure, seats])])).toEqual([[1, [[3, ['1i']]]], [2, [[3, 'all']]], [3, [[9, ['3o']]]]]);
    expect(byDesk([change(3, 1, 'all')], seatsFor(3)).map(({ desk }) => desk)).toEqual([1, 2]);
    expect(byDesk([change(9, 1, ['2o'])], seatsFor(3))[0]!.changes[0]!.seats).toBe('all');
  });
});
