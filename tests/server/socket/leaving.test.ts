import { randomUUID } from 'node:crypto';
import { io, type Socket } from 'socket.io-client';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { dayStill } from '../../../server/store/programmeEnd.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { layOut, oneMark, type LaidOut } from '../../support/laidOut.ts';
import { inPostgres } from '../../support/oneEnsemble.ts';

const DAY = 24 * 60 * 60 * 1000;
let database: TestDatabase;
let house: House;
let laid: LaidOut;
let librarian: Visitor;
let port: number;
const open: Socket[] = [];
beforeAll(async () => {
  database = await createTestDatabase();
  const store = await inPostgres(database);
  house = await openHouse(store, {}, { heartbeat: 100 });
  laid = await layOut(store);
  librarian = await house.signIn(laid.librarian);
  await house.app.listen({ port: 0, host: '127.0.0.1' });
  port = (house.app.server.address() as { port: number }).port;
}, 60_000);
afterEach(() => open.splice(0).forEach((socket) => socket.disconnect()));
afterAll(async () => {
  await house.close();
  await house.store.close();
  await database.drop();
});

const until = async (holds: () => boolean) => {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 20));
};
const day = (days: number) => new Date(Date.parse(dayStill(new Date())) + days * DAY).toISOString().slice(0, 10);
const lasting = (until: string) => ({ title: 'Spring', days: [{ kind: 'concert', date: until }] });
const programme = () => `/api/programmes/${laid.programme}`;

async function follow(visitor: Visitor) {
  const socket = io(`http://127.0.0.1:${port}`, { path: '/socket', transports: ['websocket'], forceNew: true, reconnection: false, extraHeaders: { cookie: visitor.cookie() } });
  open.push(socket);
  const heard = { rows: 0, renewed: 0, present: [] as string[] };
  socket.on('logged', ({ entries }: { entries: unknown[] }) => (heard.rows += entries.length));
  socket.on('renewed', () => (heard.renewed += 1));
  socket.on('present', ({ people }: { people: { name: string }[] }) => (heard.present = people.map(({ name }) => name)));
  const ask = (name: string, body: unknown) => socket.timeout(20_000).emitWithAck(name, body);
  await ask('hello', { protocol: PROTOCOL });
  const answer = await ask('follow', { part: laid.part, after: 0 });
  await ask('looking', { part: laid.part, measure: 1 });
  return { socket, heard, answer, ask };
}
const propose = async () => {
  const principal = await house.signIn(laid.principal);
  return principal.post(`/api/parts/${laid.part}/operations/propose`, { operation: randomUUID(), input: oneMark() });
};

async function deputy(name: string) {
  const person = await house.store.people.add(name, false, true);
  const seats = [laid.principal.id, person.id].map((id, index) => ({ seat: index ? '1i' : '1o', person: id }));
  await librarian.put(`${programme()}/sections/${laid.section}/seating`, { seats, principal: laid.principal.id });
  return { person, visitor: await house.signIn(person) };
}

describe('a deputy', { timeout: 60_000 }, () => {
  it('reaches the programme they sit in through its last day, and nothing of it the day after: over HTTP, by an operation, and over an open line, which loses part and presence', async () => {
    await librarian.put(programme(), lasting(day(0)));
    const { person, visitor } = await deputy('Ruth Deputy');
    const path = `/api/parts/${laid.part}`;
    expect((await visitor.get(path)).status).toBe(200);
    expect((await visitor.get('/api/shelf')).json.programmes.map(({ id }: { id: string }) => id)).toEqual([laid.programme]);
    expect((await visitor.post(`${path}/operations/propose`, { operation: randomUUID(), input: oneMark() })).status).toBe(200);
    const [line, colleague] = [await follow(visitor), await follow(await house.signIn(laid.principal))];
    expect(line.answer.ok).toBe(true);
    await until(() => colleague.heard.present.includes(person.name));

    await librarian.put(programme(), lasting(day(-1)));
    await until(() => line.heard.renewed > 0 && !colleague.heard.present.includes(person.name));
    const before = line.heard.rows;
    expect((await propose()).status).toBe(200);
    await until(() => colleague.heard.rows > 0);
    expect(line.heard.rows).toBe(before);
    expect((await line.ask('follow', { part: laid.part, after: 0 })).ok).toBe(false);
    expect((await line.ask('submit', { part: laid.part, operation: randomUUID(), name: 'propose', input: oneMark() })).ok).toBe(false);
    expect([(await visitor.get(path)).status, (await visitor.get(programme())).status, (await visitor.get('/api/shelf')).json.programmes]).toEqual([404, 404, []]);
    expect((await visitor.post(`${path}/operations/propose`, { operation: randomUUID(), input: oneMark() })).status).toBe(404);
  });

  it('has no usual seat; is a member once the librarian says so, and gives up usual seats when made a deputy again', async () => {
    await librarian.put(programme(), lasting(day(9)));
    const { person, visitor } = await deputy('Sam Deputy');
    const usual = `/api/sections/${laid.section}/seating`;
    const plan = { seats: [{ seat: '1o', person: laid.principal.id }, { seat: '1i', person: person.id }], principal: laid.principal.id };
    expect((await librarian.put(usual, plan)).status).toBe(404);
    expect((await visitor.get('/api/archive')).json.code).toBe('NOT_FOR_DEPUTIES');
    expect((await librarian.put(`/api/people/${person.id}/standing`, { librarian: false, deputy: false })).json.person).toMatchObject({ deputy: false });
    expect((await librarian.put(usual, plan)).status).toBe(200);
    expect((await visitor.get('/api/archive')).status).toBe(200);
    await librarian.put(`/api/people/${person.id}/standing`, { librarian: false, deputy: true });
    expect((await visitor.get('/api/me')).json.memberships).toEqual([]);
  });

  it('who is taken out of the seating loses the part at once', async () => {
    const { visitor } = await deputy('Tom Deputy');
    const line = await follow(visitor);
    await librarian.remove(`${programme()}/sections/${laid.section}/seating`);
    await until(() => line.heard.renewed > 0);
    expect((await line.ask('follow', { part: laid.part, after: 0 })).ok).toBe(false);
  });
});

describe('somebody who leaves', { timeout: 60_000 }, () => {
  it('loses seat, line and links, keeps their name on what they did, and comes back as themselves', async () => {
    const person = await house.store.people.add('Vera Leaving', false);
    await house.store.sections.seat(laid.section, { seats: [{ seat: '1o', person: laid.principal.id }, { seat: '1i', person: person.id }], principal: laid.principal.id });
    const { link } = (await librarian.post(`/api/people/${person.id}/link`)).json;
    const bound = house.visitor();
    await bound.post('/api/sign-in', { token: new URL((await librarian.post(`/api/people/${person.id}/link`)).json.link).searchParams.get('token') });
    const own = await house.signIn(person);
    await own.post(`/api/parts/${laid.part}/operations/propose`, { operation: randomUUID(), input: oneMark() });
    const line = await follow(own);
    const boundLine = await follow(bound);
    const hungUp = new Promise((resolve) => boundLine.socket.once('disconnect', resolve));

    expect((await librarian.remove(`/api/people/${person.id}`)).json.gone).toMatchObject([{ id: person.id, name: 'Vera Leaving' }]);
    await Promise.all([hungUp, until(() => line.heard.renewed > 0)]);
    expect((await house.store.sections.byId(laid.section))!.seats[1]).toEqual({ seat: '1i', person: null });
    expect((await own.get(`/api/parts/${laid.part}`)).status).toBeGreaterThanOrEqual(403);
    expect((await bound.get('/api/me')).status).toBe(401);
    expect((await house.visitor().post('/api/sign-in', { token: new URL(link).searchParams.get('token') })).status).toBe(410);
    expect(((await librarian.get(`/api/parts/${laid.part}/log`)).json.entries as { byName: string }[]).some(({ byName }) => byName === 'Vera Leaving')).toBe(true);
    expect((await librarian.get(`/api/trail?person=${person.id}&kind=personLeft`)).json.rows).toMatchObject([{ by: { name: laid.librarian.name }, about: { name: 'Vera Leaving' } }]);

    expect((await librarian.post(`/api/people/${person.id}/back`, { librarian: false, deputy: false })).json.person.id).toBe(person.id);
    expect((await own.get('/api/me')).json.name).toBe('Vera Leaving');
  });
});

describe('the librarian’s work', { timeout: 60_000 }, () => {
  it('is never taken from the last who does it, nor from oneself unless one means it', async () => {
    const own = `/api/people/${laid.librarian.id}`;
    const player = { librarian: false, deputy: false };
    for (const one of await house.store.people.all()) if (one.librarian && one.id !== laid.librarian.id) await house.store.people.stand(one.id, player);
    expect((await librarian.put(`${own}/standing`, player)).json.code).toBe('YOURSELF');
    expect((await librarian.put(`${own}/standing`, { ...player, myself: true })).json.code).toBe('LAST_LIBRARIAN');
    expect((await librarian.remove(own)).json.code).toBe('YOURSELF');
    expect((await librarian.remove(`${own}?myself=true`)).json.code).toBe('LAST_LIBRARIAN');
    const other = await house.store.people.add('Second Librarian', false);
    expect((await librarian.put(`/api/people/${other.id}/standing`, { librarian: true, deputy: false })).status).toBe(200);
    // Two who give it up in the same moment: one of them keeps it.
    const outcomes = await Promise.all([laid.librarian.id, other.id].map((id) => house.store.people.stand(id, player)));
    expect(outcomes.filter((one) => one === 'lastLibrarian')).toHaveLength(1);
    expect((await house.store.people.all()).filter((one) => one.librarian)).toHaveLength(1);
    await house.store.people.stand(laid.librarian.id, { librarian: true, deputy: false });
  });

  it('the trail is read by the librarian, by a principal as far as their section goes, by no player and no deputy', async () => {
    const [principal, player] = [await house.signIn(laid.principal), await house.signIn(laid.player)];
    await house.store.trail.tell({ kind: 'seatingChanged', section: 'another' }, laid.librarian);
    expect((await player.get('/api/trail')).json.code).toBe('NOT_YOUR_ROLE');
    expect((await (await deputy('Una Deputy')).visitor.get('/api/trail')).json.code).toBe('NOT_FOR_DEPUTIES');
    const sections = async (visitor: Visitor) => new Set((await visitor.get('/api/trail?kind=seatingChanged')).json.rows.map(({ section }: { section: string }) => section));
    expect(await sections(principal)).toEqual(new Set([laid.section]));
    expect(await sections(librarian)).toEqual(new Set([laid.section, 'another']));
  });
});
