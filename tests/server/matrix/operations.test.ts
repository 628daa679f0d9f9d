import { randomUUID } from 'node:crypto';
import { io, type Socket } from 'socket.io-client';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OPERATIONS, type OperationName } from '../../../core/agreement/registry.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { opened, OPERATION_ROWS } from './operations.ts';
import { ACTORS, furnishTwo, patiently, type ActorName, type TwoEnsembles } from './people.ts';

type Verdict = 'written' | 'NOT_YOUR_ROLE' | 'no such part' | 'not signed in';

/** Those to whom the part is nowhere. */
const SHUT_OUT: readonly ActorName[] = ['foreignLibrarian', 'foreignPrincipal', 'inBothBound', 'deputyElsewhere', 'deputyAfterwards'];

const verdict = (name: OperationName, actor: ActorName): Verdict =>
  actor === 'signedOut' ? 'not signed in' : SHUT_OUT.includes(actor) ? 'no such part' : OPERATION_ROWS[name].who.includes(actor) ? 'written' : 'NOT_YOUR_ROLE';

const names = Object.keys(OPERATIONS) as OperationName[];
const cells = names.flatMap((name) => ACTORS.map((actor) => ({ name, actor, expected: verdict(name, actor) })));

describe('every operation, by everybody', () => {
  let database: TestDatabase;
  let at: TwoEnsembles;
  let port: number;
  beforeAll(async () => {
    database = await createTestDatabase();
    at = await furnishTwo(database);
    await at.house.app.listen({ port: 0, host: '127.0.0.1' });
    port = (at.house.app.server.address() as { port: number }).port;
  });
  afterAll(async () => {
    await at.close();
    await database.drop();
  });

  const head = async () => (await at.house.store.log.heads([at.laid.part])).get(at.laid.part)!;

  async function dial(actor: ActorName): Promise<Socket | null> {
    const { cookie } = await at.as(actor);
    const socket = io(`http://127.0.0.1:${port}`, { path: '/socket', transports: ['websocket'], forceNew: true, reconnection: false, extraHeaders: { cookie: cookie() } });
    return new Promise((resolve) => socket.once('connect', () => resolve(socket)).once('connect_error', () => resolve(null)));
  }

  it('the table has a row for each of them', () => {
    expect(Object.keys(OPERATION_ROWS).sort()).toEqual([...names].sort());
  });

  it.each(cells)('$name over HTTP by $actor: $expected', async ({ name, actor, expected }) => {
    await opened(at);
    const input = await OPERATION_ROWS[name].input(at, actor);
    const before = await head();
    const visitor = await at.as(actor);
    const { status, json } = await patiently(() => visitor.post(`/api/parts/${at.laid.part}/operations/${name}`, { operation: randomUUID(), input }));
    const said = { 200: 'written', 401: 'not signed in', 404: 'no such part' }[status] ?? (json as { refusal?: { code: string } }).refusal?.code;
    expect(said).toBe(expected);
    expect((await head()) - before).toBe(expected === 'written' ? 1 : 0);
  });

  it.each(cells)('$name over the socket by $actor: $expected', async ({ name, actor, expected }) => {
    await opened(at);
    const input = await OPERATION_ROWS[name].input(at, actor);
    const before = await head();
    const socket = await dial(actor);
    if (!socket) return expect('not signed in').toBe(expected);
    await socket.emitWithAck('hello', { protocol: PROTOCOL });
    const answer = (await socket.emitWithAck('submit', { part: at.laid.part, operation: randomUUID(), name, input })) as { ok: boolean; refusal?: { code: string; facts?: { detail?: string } } };
    socket.disconnect();
    const said = answer.ok ? 'written' : answer.refusal?.facts?.detail?.includes('no such part') ? 'no such part' : answer.refusal?.code;
    expect(said).toBe(expected);
    expect((await head()) - before).toBe(expected === 'written' ? 1 : 0);
  });

  it.each(ACTORS.map((actor) => ({ actor, hears: actor !== 'signedOut' && !SHUT_OUT.includes(actor) })))('$actor follows the part: $hears', async ({ actor, hears }) => {
    const socket = await dial(actor);
    if (!socket) return expect(hears).toBe(false);
    await socket.emitWithAck('hello', { protocol: PROTOCOL });
    const heard: unknown[] = [];
    socket.onAny((event, message: { part?: string }) => message.part === at.laid.part && heard.push(event));
    const followed = (await socket.emitWithAck('follow', { part: at.laid.part, after: 0 })) as { ok: boolean; entries?: unknown[] };
    expect(followed.ok).toBe(hears);
    const visitor = await at.as('librarian');
    await visitor.post(`/api/parts/${at.laid.part}/operations/comment`, { operation: randomUUID(), input: { id: randomUUID(), measure: 1, text: 'Is anybody there?' } });
    // Whoever may not follow hears nothing, though they say where they look and what they would like to hear.
    await socket.emitWithAck('looking', { part: at.laid.part, measure: 1 });
    await socket.emitWithAck('unfollow', { part: at.laid.part });
    socket.disconnect();
    expect(heard.includes('logged')).toBe(hears);
    if (!hears) expect(heard).toEqual([]);
  });
});
