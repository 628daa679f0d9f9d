import { randomUUID } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { PieceCheck } from '../../../core/agreement/wire/piece.ts';
import { Exhausted, type RunOptions } from '../../../server/jobs/runInWorker.ts';
import { chance } from '../../support/chance.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { layOut, oneMark, type LaidOut } from '../../support/laidOut.ts';
import { longPart } from '../../support/longPart.ts';
import { smallPart } from '../../support/smallPart.ts';
import { inMemory, type OneEnsemble } from '../../support/oneEnsemble.ts';

/** A look that goes on until the test lets it end. */
interface Look {
  parts: readonly Uint8Array[];
  options: RunOptions;
  end(): void;
  fail(reason: unknown): void;
}

let store: OneEnsemble, house: House, laid: LaidOut, work: string, parts: string[];
let principal: Visitor, player: Visitor, guest: Visitor;
let looks: Look[];

const finding = { rule: 'bow/outlasts-bow', text: 'The bow runs out.', severity: 'collides' as const, measure: 1, where: 'measure 1', seats: 'all' as const, rested: null };

beforeEach(async () => {
  store = await inMemory();
  laid = await layOut(store);
  looks = [];
  const edition = { bytes: new Uint8Array(), fileName: 'two.musicxml', by: laid.librarian.id, at: new Date() };
  const added = (await store.library.addWork(laid.programme, { title: 'Two', composer: '' }, edition, [{ content: smallPart('P1', 'Violin I'), section: laid.section }, { content: smallPart('P2', 'Viola'), section: null }]))!;
  [work, parts] = [added.id, added.parts.map(({ id }) => id)];
  house = await openHouse(store, {
    lookThrough: (packed, options = {}) =>
      new Promise((resolve, fail) => {
        options.signal?.addEventListener('abort', () => fail(options.signal!.reason));
        looks.push({ parts: packed, options, end: () => resolve(parts.map((id, i) => ({ id, findings: i ? [finding, { ...finding, rested: { by: 'Ilya Brandt', reason: 'Meant.' } }, { ...finding, severity: 'worthALook' }] : [] }))), fail });
      }),
  });
  [principal, player, guest] = await Promise.all([house.signIn(laid.principal), house.signIn(laid.player), house.signIn(laid.guest)]);
});
afterEach(() => house.close());

const address = () => `/api/works/${work}/check`;
const seen = async (visitor: Visitor): Promise<PieceCheck> => (await visitor.get(address())).json;
const begun = async (n: number): Promise<Look> => {
  while (looks.length < n) await new Promise((resolve) => setTimeout(resolve, 1));
  return looks[n - 1]!;
};
const settled = async (visitor: Visitor): Promise<PieceCheck> => {
  for (;;) {
    const view = await seen(visitor);
    if (!view.running) return view;
    await new Promise((resolve) => setTimeout(resolve, 1));
  }
};

describe('a whole piece, over HTTP', () => {
  it('is looked through for whoever may read its parts, and tells how far it has come', async () => {
    expect(await house.visitor().post(address())).toMatchObject({ status: 401 });
    expect(await guest.post('/api/works/nowhere/check')).toMatchObject({ status: 404 });
    expect((await guest.post(address())).json).toEqual({ running: { done: 0, of: 2, reading: null, mine: true }, found: null, trouble: null });
    const look = await begun(1);
    expect(look.parts).toHaveLength(2);
    look.options.onReached!(1);
    await expect.poll(async () => (await seen(guest)).running, { timeout: 10_000 }).toEqual({ done: 1, of: 2, reading: 'Viola', mine: true });
    look.end();
    expect(await settled(guest)).toEqual({
      running: null,
      found: { at: expect.any(String), before: [], parts: [{ id: parts[0], name: 'Violin I', counts: { cannotPlay: 0, collides: 0, worthALook: 0 }, rested: 0 }, { id: parts[1], name: 'Viola', counts: { cannotPlay: 0, collides: 1, worthALook: 1 }, rested: 1 }] },
      trouble: null,
    });
    expect((await guest.get(`${address()}/parts/${parts[1]}`)).json).toHaveLength(3);
    expect(await house.visitor().get(`${address()}/parts/${parts[1]}`)).toMatchObject({ status: 401 });
    expect(await guest.get(`${address()}/parts/${laid.part}`)).toMatchObject({ status: 404, json: { code: 'NOT_LOOKED_THROUGH' } });
  });

  it('who asks while one runs joins it, and it is stopped when the last of them waits no more', async () => {
    await principal.post(address());
    await player.post(address());
    const look = await begun(1);
    expect((await seen(guest)).running?.mine).toBe(false);
    expect((await principal.remove(address())).json.running).toMatchObject({ mine: false });
    await guest.remove(address());
    expect(look.options.signal!.aborted).toBe(false);
    expect((await player.remove(address())).json).toEqual({ running: null, found: null, trouble: null });
    expect(look.options.signal!.aborted).toBe(true);
    expect(looks).toHaveLength(1);
    await principal.post(address());
    (await begun(2)).end();
    expect((await settled(principal)).found?.parts).toHaveLength(2);
  });

  it('a proposal changes nothing of what was found; what is inked in makes it one from before', async () => {
    await principal.post(address());
    (await begun(1)).end();
    await settled(principal);
    const ask = (name: string, input: unknown) => principal.post(`/api/parts/${parts[0]}/operations/${name}`, { operation: randomUUID(), input });
    const id = randomUUID();
    expect((await ask('propose', oneMark(id))).status).toBe(200);
    expect((await seen(principal)).found?.before).toEqual([]);
    expect((await ask('adopt', { proposal: id, revision: 1, why: 'Agreed.' })).status).toBe(200);
    expect((await seen(principal)).found?.before).toEqual(['Violin I']);
    await principal.post(address());
    (await begun(2)).end();
    expect((await settled(principal)).found?.before).toEqual([]);
  });

  it('what a section settles anew, also while it runs, makes it one from before', async () => {
    await principal.post(address());
    const look = await begun(1);
    await principal.put(`/api/sections/${laid.section}/settings`, { openStrings: 'avoided' });
    look.end();
    expect((await settled(principal)).found?.before).toEqual(['Violin I']);
  });

  it('where it takes too much, or breaks, it is said in a sentence, and what was found before stays', async () => {
    await principal.post(address());
    (await begun(1)).end();
    await settled(principal);
    await principal.post(address());
    (await begun(2)).fail(new Exhausted('time'));
    expect(await settled(principal)).toMatchObject({ trouble: { code: 'TOO_BIG', text: expect.stringContaining('more time than') }, found: { parts: [{}, {}] } });
    await principal.post(address());
    (await begun(3)).fail(new Error('a bug'));
    const { trouble } = await settled(principal);
    expect(house.lines.join()).toContain(trouble!.incident);
  });

  it('marks are proposed and parts are opened while a worker reads', async () => {
    const random = chance(7);
    const long = Array.from({ length: 4 }, (_, i) => ({ content: { ...longPart(300, random), id: `L${i}`, name: `Part ${i}` }, section: null }));
    const edition = { bytes: new Uint8Array(), fileName: 'long.musicxml', by: laid.librarian.id, at: new Date() };
    const { id } = (await store.library.addWork(laid.programme, { title: 'Long', composer: '' }, edition, long))!;
    // Its worker would take the look out of the line and never end it.
    await house.close();
    house = await openHouse(store);
    const reader = await house.signIn(laid.principal);
    const running = async () => (await reader.get(`/api/works/${id}/check`)).json.running as PieceCheck['running'];
    await reader.post(`/api/works/${id}/check`);
    while ((await running())?.reading === null) await new Promise((resolve) => setTimeout(resolve, 5));
    expect((await reader.post(`/api/parts/${parts[0]}/operations/propose`, { operation: randomUUID(), input: oneMark() })).status).toBe(200);
    expect((await reader.get(`/api/parts/${parts[0]}`)).json.head).toBe(1);
    expect(await running()).toMatchObject({ of: 4 });
  });

  it('a look that still runs ends with the house', async () => {
    await principal.post(address());
    const look = await begun(1);
    await house.close();
    expect(look.options.signal!.aborted).toBe(true);
  });
});
