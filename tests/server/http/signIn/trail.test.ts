import { afterAll, beforeAll, expect, it } from 'vitest';
import { linkFor, openHouse, tokenOf, type House } from '../../../support/house.ts';
import { layOut, type LaidOut } from '../../../support/laidOut.ts';
import { createTestDatabase, type TestDatabase } from '../../../support/database.ts';
import { inPostgres } from '../../../support/oneEnsemble.ts';

let database: TestDatabase;
let house: House;
let laid: LaidOut;
beforeAll(async () => {
  database = await createTestDatabase();
  house = await openHouse(await inPostgres(database));
  laid = await layOut(house.store);
});
afterAll(async () => {
  await house.close();
  await house.store.close();
  await database.drop();
});

const told = async () => ((await (await house.signIn(laid.librarian)).get(`/api/trail?person=${laid.player.id}`)).json as { rows: { kind: string; by: { name: string } | null; facts: Record<string, string> }[] }).rows.map(({ kind, by, facts }) => [kind, by?.name ?? null, facts.way ?? '']);

it('come in, go out and fail to come in are told, with who made the link and by which way', async () => {
  const librarian = await house.signIn(laid.librarian);
  const { link } = (await librarian.post(`/api/people/${laid.player.id}/link`)).json as { link: string };
  const player = house.visitor();
  await player.post('/api/sign-in', { token: tokenOf(link) });
  await player.post('/api/sign-out');
  expect(await told()).toEqual([
    ['sessionEnded', laid.player.name, ''],
    ['signedIn', laid.player.name, 'link'],
    ['linkMade', laid.librarian.name, ''],
    ['personAdded', null, ''],
  ]);
});

it('a wrong password is told to the ensemble of whoever it was meant for, as nobody’s doing', async () => {
  await house.store.door.setAddress(laid.player.id, { address: 'mona@varnholm.example', language: 'en' }, new Date());
  expect((await house.visitor().post('/api/sign-in/password', { address: 'mona@varnholm.example', password: 'not what it is at all' })).status).toBeGreaterThanOrEqual(400);
  await expect.poll(async () => (await told())[0]).toEqual(['signInFailed', null, 'password']);
});

it('a link that is only looked at is not told', async () => {
  const before = (await told()).length;
  await house.visitor().get(`/sign-in?token=${tokenOf(await linkFor(house, laid.player))}`);
  expect((await told()).length).toBe(before);
});
