import { describe, expect, it } from 'vitest';
import { received, toSend, type NamedSection } from '../../../client/checking/othersSent.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { smallPart } from '../../support/smallPart.ts';

const retake: Mark = { note: 'P1n1', value: { kind: 'retake' } };
const section = (id: string): NamedSection => ({ id, section: id, part: smallPart(id), marks: [retake], seats: seatsFor(2) });
/** As it arrives in a worker: a copy. */
const over = (before: readonly NamedSection[], now: readonly NamedSection[], there: readonly NamedSection[]) => received(there, structuredClone(toSend(before, now)));

describe('the other sections on their way to the checker', () => {
  const [viola, cello, bass] = [section('viola'), section('cello'), section('bass')];
  const there = over([], [viola, cello], []);

  it('come over whole the first time', () => {
    expect(there).toEqual([viola, cello]);
  });

  it('marks that changed in one come alone: its music, and all of the other, stay the same objects', () => {
    const marked = { ...viola, marks: [] };
    const after = over([viola, cello], [marked, cello], there);
    expect(after).toEqual([marked, cello]);
    expect(after[0]!.part).toBe(there[0]!.part);
    expect(after[1]).toBe(there[1]);
    expect(toSend([viola, cello], [marked, cello]).map(({ part }) => part)).toEqual([null, null]);
  });

  it('exchanged music comes anew, with the marks that were known', () => {
    const corrected = { ...cello, part: smallPart('cello', 'Cello', 6) };
    const after = over([viola, cello], [viola, corrected], there);
    expect(after).toEqual([viola, corrected]);
    expect(after[1]!.marks).toBe(there[1]!.marks);
  });

  it('a section that goes is gone, and one that comes is sent whole', () => {
    expect(over([viola, cello], [bass, viola], there)).toEqual([bass, viola]);
  });

  it('what was never sent cannot be left out', () => {
    expect(() => received([], toSend([viola], [viola]))).toThrow('never sent');
  });
});
