import { randomUUID } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createHalls, type Hall } from '../../../server/halls.ts';
import { createNotices } from '../../../server/operations/notices.ts';
import { openHouse, type House } from '../../support/house.ts';
import { layOut, type LaidOut } from '../../support/laidOut.ts';
import { listenTo, until, type Listener } from '../../support/listener.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

/** Somebody of another ensemble who asks for a part by its id, while the database does not answer them. */
describe('a part that is asked for from another ensemble', () => {
  let house: House, laid: LaidOut, member: Listener, stranger: Listener;

  beforeEach(async () => {
    const store = await inMemory();
    const other = (await store.door.addEnsemble('Another house'))!;
    const notices = createNotices();
    const halls = createHalls(store.installation, notices.logged);
    const away = () => Promise.reject(Object.assign(new Error('The database is away.'), { code: '57P01' }));
    const withoutRows = (hall: Hall): Hall => ({ ...hall, store: { ...hall.store, log: { ...hall.store.log, entries: away } } });
    house = await openHouse(store, { notices, hall: (id) => (id === other.id ? withoutRows(halls(id)) : halls(id)) }, { heartbeat: 50 });
    await house.app.listen({ port: 0, host: '127.0.0.1' });
    laid = await layOut(store);
    const address = `http://127.0.0.1:${(house.app.server.address() as { port: number }).port}`;
    const from = await store.installation.of(other.id).people.add('Somebody else', false);
    member = await listenTo(address, (await house.signIn(laid.player)).cookie(), laid.part);
    stranger = await listenTo(address, (await house.signIn(from)).cookie(), laid.part);
  });
  afterEach(async () => {
    member.socket.disconnect();
    stranger.socket.disconnect();
    await house.close();
    await house.store.close();
  });

  it('tells them none of its rows', async () => {
    const asker = { person: laid.player.id, session: null };
    const input = { id: randomUUID(), measure: 1, text: 'Slower?' };
    await house.deps.hall(house.store.ensemble).authority.submit(laid.part, { request: { operation: randomUUID(), name: 'comment', input }, asker });
    await until(() => member.heard.logged.length > 0);
    expect(stranger.heard.logged).toEqual([]);
  });

  it('goes on telling its own followers where its log stands', async () => {
    const before = member.heard.head.length;
    await until(() => member.heard.head.length > before + 2);
    expect(stranger.heard.head).toEqual([]);
  });
});
