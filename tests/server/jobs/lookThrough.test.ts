import { describe, expect, it } from 'vitest';
import type { Mute } from '../../../core/agreement/state.ts';
import { checkPart } from '../../../core/check/checkPart.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { checkPiece, packed, type PieceOrder } from '../../../server/jobs/checkPiece.ts';
import { importScore } from '../../../server/jobs/documents.ts';
import { lookThrough } from '../../../server/jobs/lookThrough.ts';
import { chance } from '../../support/chance.ts';
import { GOOD } from '../../support/hostileFiles.ts';
import { anyMarks, longPart } from '../../support/longPart.ts';
import { partOf } from '../../support/partBuilder.ts';

const seats = seatsFor(4);
const against: Mark[] = [{ note: 'm1n0', value: { kind: 'bow', bow: 'up' }, seats: 'all' }];
const order = (id: string, music: string, marks: Mark[], mutes: Record<string, Mute> = {}): PieceOrder => ({ id, name: id, part: partOf(music), seats, marks, settings: {}, mutes });
const firsts = order('Violin I', '{q=60} D5:1<down> E5:1 F5:1 G5:1 | A5:1 G5:1 F5:2', []);
const seconds = order('Violin II', '{q=60} D4:1 E4:1 F4:1 G4:1 | A4:1 G4:1 F4:2', against);

/** Parts of some hundred measures full of marks, so that reading them takes a while. */
function longPiece(parts: number): Uint8Array[] {
  const random = chance(5);
  return Array.from({ length: parts }, (_, i) => {
    const part = longPart(400, random);
    return packed({ id: `P${i}`, name: `Part ${i}`, part, seats, marks: anyMarks(part, seats, 600, random), settings: {}, mutes: {} });
  });
}

describe('parts read one after another', () => {
  it('each is told of before it is read', () => {
    const heard: number[] = [];
    expect(checkPiece([firsts, seconds].map(packed), (part) => heard.push(part)).map(({ id }) => id)).toEqual(['Violin I', 'Violin II']);
    expect(heard).toEqual([0, 1]);
  });

  it('what a section has put to rest is told apart, with who and why, only while it stands as it did', () => {
    const others = [{ section: 'Violin I', part: firsts.part, marks: [], seats }];
    const [clash] = checkPart({ ...seconds, others });
    const mute: Mute = { id: 'm', rule: clash!.rule, place: clash!.place, fingerprint: clash!.fingerprint, reason: 'It is meant.', muted: { by: 'p', name: 'Ilse Tarnow', at: '2026-11-25T10:00:00Z', seq: 1 } };
    const restedBy = (mutes: Record<string, Mute>) => checkPiece([firsts, { ...seconds, mutes }].map(packed), () => {})[1]!.findings.map(({ rested }) => rested);
    expect(restedBy({})).toEqual([null]);
    expect(restedBy({ m: mute })).toEqual([{ by: 'Ilse Tarnow', reason: 'It is meant.' }]);
    expect(restedBy({ m: { ...mute, fingerprint: 'another' } })).toEqual([null]);
  });

  it('a finding says its measure as it is printed', () => {
    expect(checkPiece([firsts, seconds].map(packed), () => {})[1]!.findings[0]).toMatchObject({ measure: 1, where: 'measure 1', severity: 'collides' });
  });
});

describe('a piece looked through in a worker', () => {
  it('comes to what it comes to here, and tells how far it is', async () => {
    const heard: number[] = [];
    const answer = await lookThrough([firsts, seconds].map(packed), { onReached: (part) => heard.push(part) });
    expect(answer).toEqual(checkPiece([firsts, seconds].map(packed), () => {}));
    expect(heard).toEqual([0, 1]);
  });

  it('leaves the server free: a score is imported and the loop turns while it reads', async () => {
    const parts = longPiece(4);
    let [over, turns] = [false, 0];
    let reading = (_: number): void => {};
    const begun = new Promise<number>((resolve) => (reading = resolve));
    const looked = lookThrough(parts, { onReached: reading }).finally(() => (over = true));
    const turn = (): void => void (over || ((turns += 1), setImmediate(turn)));
    await begun;
    turn();
    const [imported, found] = await Promise.all([importScore(Buffer.from(GOOD), 'good.musicxml'), looked]);
    expect(imported).toMatchObject({ ok: true });
    expect(found).toHaveLength(4);
    expect(turns).toBeGreaterThan(100);
  });

  it('stops when it is told to, and the next one is not kept waiting', async () => {
    const stop = new AbortController();
    const parts = longPiece(4);
    const looked = lookThrough(parts, { signal: stop.signal, onReached: () => stop.abort(new Error('Nobody waits.')) });
    await expect(looked).rejects.toThrow('Nobody waits.');
    expect(await lookThrough([packed(firsts)])).toHaveLength(1);
  });
});
