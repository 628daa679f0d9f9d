import { describe, expect, it } from 'vitest';
import { changedMeasures, sinceHandedOut } from '../../../core/agreement/sinceHandedOut.ts';
import type { Stage } from '../../../core/agreement/state.ts';
import type { Mark, MarkValue } from '../../../core/music/mark.ts';
import { Conversation, FACTS, id, LIBRARIAN, PRINCIPAL, slip } from './section.ts';

const on = (note: string, value: MarkValue, seats?: string[]): Mark => ({ note, value, ...(seats ? { seats } : {}) });
const finger = (finger: 1 | 2 | 3): MarkValue => ({ kind: 'finger', finger });
const UP: MarkValue = { kind: 'bow', bow: 'up' };

class Week extends Conversation {
  #n = 0;

  ink(measure: number, marks: Mark[], seats: 'all' | string[] = 'all'): void {
    this.#n += 1;
    expect(this.say(PRINCIPAL, 'propose', slip(this.#n, { from: measure, to: measure, seats, marks }))).toBe('written');
    expect(this.say(PRINCIPAL, 'adopt', { proposal: id(this.#n), revision: 1 })).toBe('written');
  }

  move(stage: Stage): void {
    expect(this.say(LIBRARIAN, 'moveOn', { stage })).toBe('written');
  }

  since() {
    return sinceHandedOut(this.state, FACTS).map(({ measure, note, seats, gone, fresh }) => [measure, note, seats, gone, fresh]);
  }
}

function handedOut(): Week {
  const week = new Week();
  week.ink(1, [on('m1n0', finger(1))]);
  week.ink(3, [on('m3n1', finger(2), ['1i'])]);
  week.move('onStands');
  return week;
}

describe('what has changed since the parts went out', () => {
  it('is nothing at first, and nothing of what is proposed only', () => {
    const week = handedOut();
    expect(week.state.handedOut).toMatchObject({ name: 'Osk', seq: week.state.seq });
    week.say(PRINCIPAL, 'propose', slip(99, { marks: [on('m1n0', finger(3))] }));
    expect(week.since()).toEqual([]);
  });

  it('says what is gone and what is fresh, in the order of the music', () => {
    const week = handedOut();
    week.ink(4, [on('m4n2', UP)]);
    week.ink(1, [on('m1n0', finger(2))]);
    expect(week.since()).toEqual([
      [1, 'm1n0', 'all', [finger(1)], [finger(2)]],
      [4, 'm4n2', 'all', [], [UP]],
    ]);
  });

  it('reaches each seat with its own change', () => {
    const week = handedOut();
    week.ink(3, [on('m3n1', finger(1))]);
    week.ink(2, [on('m2n0', UP)], ['2o', '2i']);
    expect(week.since()).toEqual([
      [2, 'm2n0', ['2o', '2i'], [], [UP]],
      [3, 'm3n1', ['1o', '2o', '2i', '3o'], [], [finger(1)]],
      [3, 'm3n1', ['1i'], [finger(2)], [finger(1)]],
    ]);
    const changes = sinceHandedOut(week.state, FACTS);
    expect([changedMeasures(changes, '1i'), changedMeasures(changes, '2o'), changedMeasures(changes, null)]).toEqual([[3], [2, 3], [2, 3]]);
  });

  it('a mark changed and changed back is no change', () => {
    const week = handedOut();
    week.ink(1, [on('m1n0', finger(3))]);
    week.ink(1, [on('m1n0', finger(1))]);
    expect(week.since()).toEqual([]);
  });

  it('counts anew from the last time they went out, and not at all while they are off the stands', () => {
    const week = handedOut();
    week.ink(1, [on('m1n0', finger(3))]);
    week.move('inkedIn');
    expect([week.since(), week.state.handedOut]).toEqual([[], undefined]);
    week.move('onStands');
    expect(week.since()).toEqual([]);
    week.ink(2, [on('m2n1', UP)]);
    expect(week.since()).toEqual([[2, 'm2n1', 'all', [], [UP]]]);
  });

  it('leaves out notes that a corrected edition took away, and holds for a section without seats', () => {
    const week = handedOut();
    week.ink(2, [on('m2n1', UP)]);
    week.ink(4, [on('m4n0', UP)]);
    const notes = new Map([...FACTS.notes].filter(([note]) => note !== 'm2n1'));
    expect(sinceHandedOut(week.state, { ...FACTS, notes, seats: [] }).map(({ note, seats }) => [note, seats])).toEqual([['m4n0', 'all']]);
  });
});
