import { randomUUID } from 'node:crypto';
import { io, type Socket } from 'socket.io-client';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { LogEntry } from '../../../core/agreement/event.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { layOut, oneMark, type LaidOut } from '../../support/laidOut.ts';
import { inPostgres } from '../../support/oneEnsemble.ts';

let database: TestDatabase;
let house: House;
let laid: LaidOut;
let port: number;
const open: Socket[] = [];
beforeAll(async () => {
  database = await createTestDatabase();
  const store = await inPostgres(database);
  house = await openHouse(store, {}, { heartbeat: 100 });
  laid = await layOut(store);
  await house.app.listen({ port: 0, host: '127.0.0.1' });
  port = (house.app.server.address() as { port: number }).port;
});
afterEach(() => open.splice(0).forEach((socket) => socket.disconnect()));
afterAll(async () => {
  await house.close();
  await house.store.close();
  await database.drop();
});

interface Line {
  socket: Socket;
  heard: { logged: LogEntry[]; head: number[]; present: { name: string; measure: number | null; seat: string | null }[][]; renewed: number };
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- a test reads into whatever came
  ask(name: string, body: unknown): Promise<any>;
}

function dial(visitor: Visitor | null, headers: Record<string, string> = {}, transports = ['websocket']): Line {
  const socket = io(`http://127.0.0.1:${port}`, { path: '/socket', transports, forceNew: true, reconnection: false, extraHeaders: { ...(visitor ? { cookie: visitor.cookie() } : {}), ...headers } });
  open.push(socket);
  const heard: Line['heard'] = { logged: [], head: [], present: [], renewed: 0 };
  socket.on('logged', ({ entries }) => heard.logged.push(...entries));
  socket.on('head', ({ seq }) => heard.head.push(seq));
  socket.on('present', ({ people }) => heard.present.push(people));
  socket.on('renewed', () => (heard.renewed += 1));
  return { socket, heard, ask: (name, body) => socket.timeout(5000).emitWithAck(name, body) };
}
const outcome = (line: Line) => new Promise<string>((resolve) => line.socket.once('connect', () => resolve('connected')).once('connect_error', (reason) => resolve(`refused ${reason.message}`)));
const until = async (holds: () => boolean) => {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 20));
};
async function greeted(person: { id: string }, after = 0): Promise<Line> {
  const line = dial(await house.signIn(person));
  await line.ask('hello', { protocol: PROTOCOL });
  await line.ask('follow', { part: laid.part, after });
  return line;
}
const submit = (line: Line, name: string, input: unknown, operation: string = randomUUID()) => line.ask('submit', { part: laid.part, operation, name, input });

describe('a socket', () => {
  it('from a page of another site is refused, with the cookie in hand, whatever the transport', async () => {
    const visitor = await house.signIn(laid.principal);
    for (const origin of ['http://elsewhere.example', 'null', `http://127.0.0.1:${port + 1}`, `https://127.0.0.1.evil.example:${port}`]) {
      for (const transports of [['websocket'], ['polling']]) expect(await outcome(dial(visitor, { origin }, transports))).toMatch(/^refused/);
    }
    expect(await outcome(dial(visitor, { origin: `http://127.0.0.1:${port}` }))).toBe('connected');
  });

  it('without a sign-in, or with one that was ended, is refused', async () => {
    expect(await outcome(dial(null))).toMatch(/^refused/);
    expect(await outcome(dial(null, { cookie: 'bowline=not-a-token' }))).toMatch(/^refused/);
    const visitor = await house.signIn(laid.principal);
    const cookie = visitor.cookie();
    await visitor.post('/api/sign-out');
    expect(await outcome(dial(null, { cookie }))).toMatch(/^refused/);
  });

  it('is cut when its sign-in ends', async () => {
    const visitor = await house.signIn(laid.principal);
    const line = dial(visitor);
    await line.ask('hello', { protocol: PROTOCOL });
    const cut = new Promise((resolve) => line.socket.once('disconnect', resolve));
    await visitor.post('/api/sign-out');
    expect(await cut).toBe('io server disconnect');
  });

  it('that ends its sign-in elsewhere while it is open writes nothing more (guarantee 8)', async () => {
    const line = await greeted(laid.principal);
    const token = (line.socket.io.opts.extraHeaders as { cookie: string }).cookie.split('=')[1]!;
    const { hashOf } = await import('../../../server/http/tokens.ts');
    const session = (await house.store.door.session(hashOf(token), new Date()))!;
    await house.store.door.revoke(session.id, new Date());
    const before = (await house.store.log.heads([laid.part])).get(laid.part);
    const answer = await submit(line, 'propose', oneMark()).catch(() => ({ cut: true }));
    expect(answer.ok ?? false).toBe(false);
    expect(answer.refusal).toBeUndefined();
    expect((await house.store.log.heads([laid.part])).get(laid.part)).toBe(before);
  });

  it('of a deputy whose place is given up is told that the part is not open to them, hears no more of it, and is heard again when they sit there again', async () => {
    const deputy = (await house.store.people.add('Ada Quill', false, true))!;
    const sit = (person: string | null) => house.store.sections.seatFor(laid.programme, laid.section, { seats: ['1o', '1i', '2o', '2i'].map((seat, index) => ({ seat, person: [laid.principal.id, laid.player.id, person, null][index] ?? null })), principal: laid.principal.id });
    await sit(deputy.id);
    const line = await greeted(deputy);
    expect(await submit(line, 'propose', oneMark())).toMatchObject({ ok: true });
    await sit(null);
    const gone = { ok: false, refusal: { code: 'BAD_INPUT' }, gone: true };
    expect(await submit(line, 'propose', oneMark())).toMatchObject(gone);
    expect(await line.ask('follow', { part: laid.part, after: 0 })).toMatchObject(gone);
    const heard = line.heard.logged.length;
    const other = await greeted(laid.principal);
    expect(await submit(other, 'propose', oneMark())).toMatchObject({ ok: true });
    await until(() => other.heard.logged.length > 0);
    expect(line.heard.logged.length).toBe(heard);
    await sit(deputy.id);
    expect(await submit(line, 'propose', oneMark())).toMatchObject({ ok: true });
    expect(await line.ask('follow', { part: laid.part, after: 0 })).toMatchObject({ ok: true });
    await house.store.sections.seatFor(laid.programme, laid.section, null);
  });

  it('is told as whom it is open', async () => {
    const line = dial(await house.signIn(laid.player));
    expect(await line.ask('hello', { protocol: PROTOCOL })).toEqual({ ok: true, person: laid.player.id });
  });

  it('of an old page is told to load again, and nothing it says is read (guarantee 10)', async () => {
    const line = dial(await house.signIn(laid.principal));
    expect(await line.ask('hello', { protocol: PROTOCOL + 1 })).toMatchObject({ ok: false, refusal: { code: 'OLD_PROGRAM' } });
    expect(await submit(line, 'propose', oneMark())).toMatchObject({ ok: false, refusal: { code: 'OLD_PROGRAM' } });
    expect(await line.ask('follow', { part: laid.part, after: 0 })).toMatchObject({ refusal: { code: 'OLD_PROGRAM' } });
  });

  it('that says what nobody understands is answered, and the server goes on', async () => {
    const line = await greeted(laid.principal);
    for (const body of [null, 5, [], {}, { part: 5 }, { part: 'x'.repeat(10_000), after: -1 }]) {
      for (const name of ['submit', 'follow', 'unfollow', 'looking', 'hello']) expect(await line.ask(name, body)).toMatchObject({ ok: false, refusal: { code: 'BAD_INPUT' } });
    }
    line.socket.emit('submit', 'no callback');
    line.socket.emit('follow');
    expect(await line.ask('follow', { part: 'nowhere', after: 0 })).toMatchObject({ ok: false });
    expect(await submit(line, 'burn', {})).toMatchObject({ ok: false, refusal: { code: 'BAD_INPUT' } });
    expect(await line.ask('follow', { part: laid.part, after: 0 })).toMatchObject({ ok: true });
    expect(house.lines).toEqual([]);
  });
});

describe('two people on one part', () => {
  it('what one writes the other hears, the same row that the writer is answered with', async () => {
    const [writer, reader] = [await greeted(laid.principal), await greeted(laid.player)];
    const answer = await submit(writer, 'propose', oneMark());
    expect(answer).toMatchObject({ ok: true, entry: { by: laid.principal.id } });
    await until(() => reader.heard.logged.some((entry) => entry.seq === answer.entry.seq));
    expect(reader.heard.logged.at(-1)).toEqual(answer.entry);
  });

  it('HTTP and socket are two faces of one log: an id sent over both is one row', async () => {
    const line = await greeted(laid.player);
    const visitor = await house.signIn(laid.principal);
    const input = oneMark();
    const operation = randomUUID();
    const http = (await visitor.post(`/api/parts/${laid.part}/operations/propose`, { operation, input })).json;
    const socket = await submit(await greeted(laid.principal), 'propose', input, operation);
    expect(socket).toEqual(http);
    await until(() => line.heard.logged.some((entry) => entry.operation === operation));
    expect(line.heard.logged.filter((entry) => entry.operation === operation)).toHaveLength(1);
  });

  it('who comes late catches up from where they were, in pages, and then hears the rest', async () => {
    const writer = await greeted(laid.principal);
    for (let n = 0; n < 12; n++) await Promise.all(Array.from({ length: 50 }, () => house.authority.submit(laid.part, { request: { operation: randomUUID(), name: 'propose', input: oneMark() }, asker: { person: laid.principal.id, session: null } })));
    const late = dial(await house.signIn(laid.player));
    await late.ask('hello', { protocol: PROTOCOL });
    const rows: LogEntry[] = [];
    for (;;) {
      const answer = await late.ask('follow', { part: laid.part, after: rows.length });
      rows.push(...answer.entries);
      if (rows.length >= answer.head) break;
      expect(answer.entries.length).toBeGreaterThan(0);
    }
    const more = await submit(writer, 'propose', oneMark());
    await until(() => late.heard.logged.length > 0);
    expect([...rows, ...late.heard.logged].map((entry) => entry.seq)).toEqual(Array.from({ length: more.entry.seq }, (_, index) => index + 1));
  });

  it('a follower hears the head again and again, also of rows another process wrote', async () => {
    const line = await greeted(laid.player);
    const { createAuthority } = await import('../../../server/operations/authority.ts');
    const answer = await createAuthority(house.store).submit(laid.part, { request: { operation: randomUUID(), name: 'propose', input: oneMark() }, asker: { person: laid.principal.id, session: null } });
    const { seq } = (answer as { entry: LogEntry }).entry;
    await until(() => line.heard.head.includes(seq));
    expect(line.heard.logged).toEqual([]);
  });

  it('each sees where the other looks, until they leave', async () => {
    const [one, two] = [await greeted(laid.principal), await greeted(laid.player)];
    await one.ask('looking', { part: laid.part, measure: 3 });
    await until(() => two.heard.present.at(-1)?.some((person) => person.name === laid.principal.name && person.measure === 3 && person.seat === '1o') ?? false);
    one.socket.disconnect();
    await until(() => two.heard.present.at(-1)?.length === 0);
  });

  it('a change of seating or music is told to who follows the part, and to nobody else', async () => {
    const follower = await greeted(laid.player);
    const other = dial(await house.signIn(laid.guest));
    await other.ask('hello', { protocol: PROTOCOL });
    const librarian = await house.signIn(laid.librarian);
    await librarian.put(`/api/sections/${laid.section}/settings`, { partnersApart: 1 });
    await until(() => follower.heard.renewed > 0);
    expect(other.heard.renewed).toBe(0);
  });

  it('who loses their seat while connected is refused at the next line (guarantee 8)', async () => {
    const line = await greeted(laid.player);
    expect(await submit(line, 'propose', oneMark())).toMatchObject({ ok: true });
    const librarian = await house.signIn(laid.librarian);
    await librarian.put(`/api/sections/${laid.section}/seating`, { seats: [{ seat: '1o', person: laid.principal.id }], principal: laid.principal.id });
    expect(await submit(line, 'propose', oneMark())).toMatchObject({ ok: false, refusal: { code: 'NOT_YOUR_ROLE' } });
  });

  it('a flood is answered with "again later", never with a refusal', async () => {
    const line = await greeted(laid.principal);
    const answers = await Promise.all(Array.from({ length: 600 }, () => submit(line, 'unmute', { id: randomUUID() })));
    const later = answers.filter((answer) => answer.retry === true);
    expect(later.length).toBeGreaterThan(0);
    expect(answers.filter((answer) => !answer.retry).every((answer) => answer.refusal.code === 'UNKNOWN_MUTE')).toBe(true);
  });
});
