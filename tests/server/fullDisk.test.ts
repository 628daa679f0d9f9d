import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { io, type Socket } from 'socket.io-client';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Shelf } from '../../core/agreement/wire/http.ts';
import { PROTOCOL, type SubmitAnswer } from '../../core/agreement/wire/socket.ts';
import { BOOTSTRAP } from '../../server/database/connection.ts';
import { SOCKET_PORT } from '../../server/database/socketFolder.ts';
import { freePort, startServer, type ServerProcess } from '../support/serverProcess.ts';
import { canLayDisks, laySmallDisk, type SmallDisk } from '../support/smallDisk.ts';
import { caller, signIn, wholeLog } from './history/library.ts';

/** PostgreSQL's folder takes about 100 MB with the demo in it. */
const DISK = 200;
const PATIENT = { timeout: 240_000 };

describe.skipIf(!canLayDisks())('the disk of the database is full (root alone can try this)', PATIENT, () => {
  let disk: SmallDisk;
  let server: ServerProcess;
  let address: string;
  let cookie: string;
  let part: string;
  let socket: Socket;
  const sent: string[] = [];
  const written: string[] = [];

  beforeAll(async () => {
    disk = laySmallDisk(DISK);
    const port = await freePort();
    address = `http://127.0.0.1:${port}`;
    server = await startServer({ PORT: String(port), BOWLINE_DATA: join(disk.folder, 'data') }, ['--demo']);
    cookie = (await signIn(address, server.link('librarian'))).cookie;
    const { programmes } = await caller(address, cookie)<Shelf>('GET', '/api/shelf');
    part = programmes[0]!.works[0]!.parts[0]!.id;
    socket = io(address, { path: '/socket', transports: ['websocket'], extraHeaders: { cookie, origin: address } });
    await socket.emitWithAck('hello', { protocol: PROTOCOL });
  }, PATIENT.timeout);
  afterAll(async () => {
    socket.close();
    server.kill('SIGTERM');
    await server.ended;
    disk.remove();
  }, PATIENT.timeout);

  const remark = () => ({ part, operation: randomUUID(), name: 'comment', input: { id: randomUUID(), measure: 1, proposal: null, answers: null, text: Array.from({ length: 50 }, () => randomUUID()).join(' ') } });
  async function say(message: ReturnType<typeof remark>): Promise<SubmitAnswer> {
    if (!sent.includes(message.operation)) sent.push(message.operation);
    const answer = (await socket.emitWithAck('submit', message)) as SubmitAnswer;
    if (answer.ok) written.push(message.operation);
    return answer;
  }
  /** Of what was sent here, what is in the log. */
  const log = async () => (await wholeLog(address, cookie, part)).map(({ operation }) => operation).filter((operation) => sent.includes(operation));
  /** Speaks until the disk takes no more; what was not written last. */
  async function untilFull(): Promise<{ message: ReturnType<typeof remark>; answer: SubmitAnswer }> {
    for (;;) {
      const message = remark();
      const answer = await say(message);
      if (!answer.ok) return { message, answer };
    }
  }

  it('an operation that cannot be written is not acknowledged, whoever sent it is told and sends it again, and reading goes on', async () => {
    disk.fill();
    const { message, answer } = await untilFull();
    expect(answer).toEqual({ ok: false, retry: true, by: 'SHELVES_FULL', text: expect.stringContaining('The library’s disk is full') });
    const { name, part: of, ...body } = message;
    const reply = await fetch(`${address}/api/parts/${of}/operations/${name}`, { method: 'POST', headers: { cookie, 'content-type': 'application/json' }, body: JSON.stringify({ operation: body.operation, input: body.input }) });
    expect([reply.status, await reply.json()]).toMatchObject([503, { code: 'SHELVES_FULL' }]);
    expect(await log()).toEqual(written);
    disk.makeRoom();
    expect(await say(message)).toMatchObject({ ok: true });
    expect(await log()).toEqual(written);
  });

  it('also where PostgreSQL cannot go on with its journal and stops: it is started again until there is room, and everything acknowledged is there', async () => {
    disk.fill();
    const keeper = new pg.Client({ host: join(disk.folder, 'data/socket'), port: SOCKET_PORT, user: BOOTSTRAP, database: 'postgres' });
    keeper.on('error', () => {});
    await keeper.connect();
    // One file of the journal after the other, until there is no room for the next.
    const oneMore = () => keeper.query("select pg_logical_emit_message(true, 'test', 'a line'), pg_switch_wal()").then(() => true, () => false);
    while (await oneMore());
    await keeper.end().catch(() => {});
    const message = remark();
    expect(await say(message)).toMatchObject({ ok: false, retry: true });
    while (!server.lines.some((line) => line.includes('PostgreSQL has stopped; starting it again.'))) await wait(50);
    disk.makeRoom();
    let answer: SubmitAnswer;
    do answer = await say(message);
    while (!answer.ok && 'retry' in answer);
    expect(answer).toMatchObject({ ok: true });
    expect(await log()).toEqual(written);
  });
});
