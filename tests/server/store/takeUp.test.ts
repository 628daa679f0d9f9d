import { randomBytes } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { layOut, type LaidOut } from '../../support/laidOut.ts';
import { inMemory, inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

let database: TestDatabase;
const KINDS: [string, () => Promise<OneEnsemble>][] = [
  ['memory', inMemory],
  ['PostgreSQL', async () => inPostgres((database = await createTestDatabase()))],
];
const NOW = new Date('2026-11-25T12:00:00Z');
const LATER = new Date('2026-11-26T12:00:00Z');
const token = () => new Uint8Array(randomBytes(32));

describe.each(KINDS)('an invitation taken up by somebody who is known, in %s', (kind, open) => {
  let store: OneEnsemble;
  let laid: LaidOut;
  let elsewhere: string;
  beforeAll(async () => {
    store = await open();
    laid = await layOut(store);
    elsewhere = (await store.door.addEnsemble('Ebb Ensemble'))!.id;
  });
  afterAll(async () => {
    await store.close();
    if (kind === 'PostgreSQL') await database.drop();
  });

  /** Somebody of the other ensemble, invited under another name to the seat inside at the first desk, in general and in one programme. */
  async function invite(): Promise<{ invited: string; known: string; link: Uint8Array }> {
    const known = await store.installation.of(elsewhere).people.add('Tora Uhl', false);
    const invited = await store.people.add('T. Uhl', false);
    const plan = { seats: [{ seat: '1i', person: invited.id }], principal: null };
    await store.sections.seat(laid.section, plan);
    await store.sections.seatFor(laid.programme, laid.section, plan);
    const link = token();
    await store.door.addLink(invited.id, link, LATER, store.ensemble, { invitation: true, letter: null });
    return { invited: invited.id, known: known.id, link };
  }
  const seated = async () => {
    const [section, own] = [(await store.sections.byId(laid.section))!, (await store.sections.ofPart(laid.part))!];
    return [section, own].map(({ seats }) => seats.map(({ person }) => person?.name ?? null));
  };

  it('gives them its place and its seats, and the name that was invited is gone', async () => {
    const { invited, known, link } = await invite();
    expect(await seated()).toEqual([['T. Uhl'], ['T. Uhl']]);
    expect(await store.door.takeUp(link, known, NOW)).toEqual({ id: store.ensemble, name: expect.any(String) });
    expect(await seated()).toEqual([['Tora Uhl'], ['Tora Uhl']]);
    expect((await store.door.belongings(known)).map(({ ensemble }) => ensemble.id).sort()).toEqual([store.ensemble, elsewhere].sort());
    expect(await store.people.byId(known)).toEqual({ id: known, name: 'Tora Uhl', librarian: false, deputy: false });
    expect([await store.people.byId(invited), await store.door.person(invited)]).toEqual([null, null]);
    expect(await store.door.useLink(link, NOW)).toBeNull();
    expect(await store.door.takeUp(link, known, NOW)).toBe('over');
  });

  it('works once: of two at the same moment one comes in', async () => {
    const { known, link } = await invite();
    const other = await store.installation.of(elsewhere).people.add('Pia Rohde', false);
    const came = await Promise.all([known, other.id].map((one) => store.door.takeUp(link, one, NOW)));
    expect(came.filter((one) => one === 'over')).toHaveLength(1);
    expect((await seated())[0]).toEqual([typeof came[0] === 'string' ? 'Pia Rohde' : 'Tora Uhl']);
  });

  it('is not taken up late, by somebody who is there already, after its name came in, or where it is a plain link; nothing is changed then, and it still opens', async () => {
    const { invited, known, link } = await invite();
    expect(await store.door.takeUp(link, known, LATER)).toBe('over');
    expect(await store.door.takeUp(link, laid.player.id, NOW)).toBe('hereAlready');
    const plain = token();
    await store.door.addLink(invited, plain, LATER, store.ensemble);
    expect(await store.door.takeUp(plain, known, NOW)).toBe('over');
    await store.door.openSession(invited, token(), LATER, store.ensemble);
    expect(await store.door.takeUp(link, known, NOW)).toBe('cameIn');
    expect(await seated()).toEqual([['T. Uhl'], ['T. Uhl']]);
    expect(await store.door.useLink(link, NOW)).toMatchObject({ person: { id: invited } });
  });

  it('brings back somebody who had left', async () => {
    const { link } = await invite();
    await store.people.leave(laid.guest.id);
    expect((await store.people.gone()).map(({ id }) => id)).toContain(laid.guest.id);
    await store.door.takeUp(link, laid.guest.id, NOW);
    expect((await store.people.gone()).map(({ id }) => id)).not.toContain(laid.guest.id);
    expect((await seated())[0]).toEqual([laid.guest.name]);
  });
});
