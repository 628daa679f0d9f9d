import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inForce, inForceWith, marksFor, withProposals } from '../../../core/agreement/inForce.ts';
import type { AgreementState } from '../../../core/agreement/state.ts';
import type { Mark, MarkValue } from '../../../core/music/mark.ts';
import type { SeatId } from '../../../core/music/seat.ts';
import { conversations } from './arbitraries.ts';
import { Conversation, FACTS, id, PLAYER, PRINCIPAL, slip } from './section.ts';

const finger = (finger: 1 | 2 | 3 | 4, seats?: SeatId[]): Mark => ({ note: 'm1n0', value: { kind: 'finger', finger }, ...(seats ? { seats } : {}) });

function inked(...slips: Partial<Parameters<typeof slip>[1]>[]): Conversation {
  const talk = new Conversation();
  slips.forEach((over, n) => {
    expect(talk.say(PRINCIPAL, 'propose', slip(n, over))).toBe('written');
    expect(talk.say(PRINCIPAL, 'adopt', { proposal: id(n), revision: 1 })).toBe('written');
  });
  return talk;
}

const standing = ({ state }: Conversation) => state.ink.map(({ superseded }) => !superseded);

describe('superseding', () => {
  it('a new mark takes the place of the old one for the same seats; the old one says by whom', () => {
    const talk = inked({ marks: [finger(1)] }, { marks: [finger(2)] });
    expect(talk.state.ink[0]?.superseded).toMatchObject({ proposal: id(1), name: 'Runa', seq: 4, why: 'One hand, one colour' });
    expect(inForce(talk.state, FACTS.seats)).toEqual([{ ...finger(2), seats: 'all' }]);
  });

  it('a mark for one seat leaves the wider one standing for the others', () => {
    const talk = inked({ marks: [finger(1)] }, { seats: ['1i'], marks: [finger(2)] });
    expect(standing(talk)).toEqual([true, true]);
    expect(inForce(talk.state, FACTS.seats)).toEqual([
      { ...finger(1), seats: ['1o', '2o', '2i', '3o'] },
      { ...finger(2), seats: ['1i'] },
    ]);
  });

  it('a wider mark takes the place of narrower ones', () => {
    const talk = inked({ marks: [finger(1, ['1o']), finger(2, ['1i'])] }, { marks: [finger(3)] });
    expect(standing(talk)).toEqual([false, false, true]);
  });

  it('of two that overlap the later one holds where both would', () => {
    const talk = inked({ seats: ['1o', '1i'], marks: [finger(1)] }, { seats: ['1i', '2o'], marks: [finger(2)] });
    expect(standing(talk)).toEqual([true, true]);
    expect(inForce(talk.state, FACTS.seats)).toEqual([
      { ...finger(1), seats: ['1o'] },
      { ...finger(2), seats: ['1i', '2o'] },
    ]);
  });

  it('a mark overridden seat by seat until nobody is left is not in force', () => {
    const talk = inked({ seats: ['1o', '1i'], marks: [finger(1)] }, { seats: ['1i', '2o'], marks: [finger(2)] }, { seats: ['1o', '3o'], marks: [finger(3)] });
    expect(inForce(talk.state, FACTS.seats).map(({ value }) => value)).toEqual([finger(2).value, finger(3).value]);
  });

  it('rubbing out takes the place of a mark and stands itself, for what is printed there', () => {
    const none: Mark = { note: 'm1n0', value: { kind: 'none', slot: 'finger' } };
    expect(inForce(inked({ marks: [finger(1)] }, { marks: [none] }).state, FACTS.seats)).toEqual([{ ...none, seats: 'all' }]);
  });

  it('bow changes at different times stand together; "no change" rubs out one or all', () => {
    const at = (after: number): Mark => ({ note: 'm1n0', value: { kind: 'change', after } });
    const none = (after?: number): Mark => ({ note: 'm1n0', value: { kind: 'none', slot: 'change', ...(after === undefined ? {} : { after }) } });
    expect(standing(inked({ marks: [at(1), at(2)] }, { marks: [none(1)] }))).toEqual([false, true, true]);
    expect(standing(inked({ marks: [at(1), at(2)] }, { marks: [none()] }))).toEqual([false, false, true]);
    expect(standing(inked({ marks: [none()] }, { marks: [at(1)] }))).toEqual([false, true]);
  });

  it('other slots and other notes are left alone', () => {
    const talk = inked({ marks: [finger(1), { note: 'm1n0', value: { kind: 'string', string: 2 } }, { ...finger(1), note: 'm1n1' }] }, { marks: [finger(2)] });
    expect(standing(talk)).toEqual([false, true, true, true]);
  });
});

describe('trying out', () => {
  it('shows what would stand if slips were adopted, and changes nothing', () => {
    const talk = inked({ marks: [finger(1)] });
    talk.say(PLAYER, 'propose', slip(7, { seats: ['1i'], marks: [finger(4)] }));
    const before = JSON.stringify(talk.state);
    expect(withProposals(talk.state, [id(7)], FACTS)).toEqual([
      { ...finger(1), seats: ['1o', '2o', '2i', '3o'] },
      { ...finger(4), seats: ['1i'] },
    ]);
    expect(JSON.stringify(talk.state)).toBe(before);
    expect(() => withProposals(talk.state, [id(8)], FACTS)).toThrow('No proposal');
  });

  it('leaves out marks on notes that have gone', () => {
    const talk = new Conversation();
    talk.say(PLAYER, 'propose', slip(1));
    expect(withProposals(talk.state, [id(1)], { ...FACTS, notes: new Map() })).toEqual([]);
  });

  it('shows a draft over what stands', () => {
    const talk = inked({ marks: [finger(1)] });
    const draft = { proposal: 'draft', why: '', seats: 'all' as const, marks: [finger(3)], measures: [1] };
    expect(inForceWith(talk.state, [draft], FACTS.seats)).toEqual([{ ...finger(3), seats: 'all' }]);
  });
});

/** What one player has on their stand: each decision copied into their part by hand, one after the other. */
function byHand(state: AgreementState, seat: SeatId): string[] {
  const sheet = new Map<string, Map<string, MarkValue>>();
  const decided = Object.values(state.proposals).filter(({ status }) => status === 'adopted').sort((a, b) => a.decided!.seq - b.decided!.seq);
  for (const { marks, seats } of decided) {
    for (const mark of marks) {
      const whose = mark.seats ?? seats;
      if (whose !== 'all' && !whose.includes(seat)) continue;
      const note = sheet.get(mark.note) ?? new Map<string, MarkValue>();
      sheet.set(mark.note, note);
      const { value } = mark;
      const changeAt = value.kind === 'change' || (value.kind === 'none' && value.slot === 'change') ? value.after : undefined;
      if (value.kind === 'none' && value.slot === 'change' && changeAt === undefined) for (const key of [...note.keys()]) if (key.startsWith('change')) note.delete(key);
      if (changeAt !== undefined) note.delete('change');
      note.set(changeAt !== undefined ? `change ${changeAt}` : value.kind === 'none' ? value.slot : value.kind, value);
    }
  }
  return [...sheet].flatMap(([note, values]) => [...values.values()].map((value) => JSON.stringify([note, value]))).sort();
}

describe('what each seat plays', () => {
  it('equals a part kept by hand, for every seat and every history', () => {
    let marksSeen = 0;
    fc.assert(
      fc.property(conversations, (said) => {
        const talk = new Conversation();
        // Going back has an oracle of its own: tests/core/agreement/restoring.test.ts.
        for (const { by, name, input } of said) if (name !== 'restore') talk.hear(by, name, input);
        const marks = inForce(talk.state, FACTS.seats);
        for (const seat of FACTS.seats) {
          const mine = marksFor(seat, marks).map(({ note, value }) => JSON.stringify([note, value])).sort();
          marksSeen += mine.length;
          expect(mine).toEqual(byHand(talk.state, seat));
        }
      }),
      { numRuns: 500 },
    );
    expect(marksSeen).toBeGreaterThan(500);
  });
});
