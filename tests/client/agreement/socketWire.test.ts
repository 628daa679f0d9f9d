import { createServer, type Server as HttpServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Server } from 'socket.io';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { systemClock } from '../../../client/agreement/clock.ts';
import { connect, type Connection } from '../../../client/agreement/connection.ts';
import { openPart } from '../../../client/agreement/partSession.ts';
import { memoryQueue } from '../../../client/agreement/queue.ts';
import type { PartSession } from '../../../client/agreement/session.ts';
import { socketWire } from '../../../client/agreement/socketWire.ts';
import { emptyState } from '../../../core/agreement/state.ts';
import { FACTS, id, PARTNER, PLAYER, slip } from '../../core/agreement/section.ts';
import { Authority } from './authority.ts';
import { PART } from './network.ts';

/** Resolves when the session looks as asked. */
function until(session: PartSession, holds: () => boolean): Promise<void> {
  return new Promise((resolve) => {
    const look = () => {
      if (!holds()) return;
      stop();
      resolve();
    };
    const stop = session.subscribe(look);
    look();
  });
}

describe('the wire over Socket.IO, against a real server', () => {
  let http: HttpServer;
  let io: Server;
  let authority: Authority;
  let address: string;
  const open: (Connection | PartSession)[] = [];

  beforeEach(async () => {
    authority = new Authority(() => Date.now());
    http = createServer();
    io = new Server(http, { path: '/socket' });
    authority.onWritten = (entry) => io.to(PART).emit('logged', { part: PART, entries: [entry] });
    io.on('connection', (socket) => {
      const person = String(socket.handshake.headers['x-person']);
      socket.on('hello', ({ protocol }, answer) => answer(authority.hello(protocol)));
      socket.on('follow', ({ after }, answer) => {
        void socket.join(PART);
        answer(authority.follow(after));
      });
      socket.on('submit', (request, answer) => answer(authority.submit(person, request)));
    });
    await new Promise<void>((resolve) => http.listen(0, '127.0.0.1', resolve));
    address = `http://127.0.0.1:${(http.address() as AddressInfo).port}`;
  });

  afterEach(async () => {
    open.splice(0).reverse().forEach((one) => one.close());
    await io.close();
  });

  let ids = 0;
  function stand(me: typeof PARTNER): PartSession {
    authority.people.set(me.id, me);
    const connection = connect({ openWire: socketWire({ address, headers: { 'x-person': me.id } }), clock: systemClock });
    const session = openPart({ part: PART, connection, storage: memoryQueue(), clock: systemClock, newId: () => id(700_000 + (ids += 1)), me, facts: FACTS, state: emptyState() });
    open.push(connection, session);
    return session;
  }

  it('two people see what each writes', async () => {
    const [piet, wanda] = [stand(PARTNER), stand(PLAYER)];
    await Promise.all([piet, wanda].map((session) => until(session, () => session.getSnapshot().caughtUp)));
    expect(await piet.settled(piet.submit('propose', slip(1)))).toEqual({ ok: true, seq: 1 });
    await until(wanda, () => id(1) in wanda.getSnapshot().state.proposals);
    expect(wanda.getSnapshot().confirmed).toEqual(authority.state);
  });

  it('when the server hangs up the line comes back by itself, and what was written meanwhile is sent', async () => {
    const piet = stand(PARTNER);
    await until(piet, () => piet.getSnapshot().caughtUp);
    io.disconnectSockets(true);
    await until(piet, () => piet.getSnapshot().status === 'away');
    const operation = piet.submit('propose', slip(1));
    expect(await piet.settled(operation)).toEqual({ ok: true, seq: 1 });
    expect(piet.getSnapshot().status).toBe('live');
  });

  it('when the transport breaks in the middle of an answer it is asked for again and written once', async () => {
    const piet = stand(PARTNER);
    await until(piet, () => piet.getSnapshot().caughtUp);
    const { onWritten } = authority;
    authority.onWritten = () => {
      authority.onWritten = onWritten;
      io.sockets.sockets.forEach(({ conn }) => conn.close(true));
    };
    const operation = piet.submit('propose', slip(1));
    expect(await piet.settled(operation)).toEqual({ ok: true, seq: 1 });
    expect(authority.log).toHaveLength(1);
  });

  it('a line refused by the server’s own gate is knocked at again', async () => {
    let shut = true;
    io.use((_, next) => (shut ? next(new Error('Not signed in.')) : next()));
    const piet = stand(PARTNER);
    await until(piet, () => piet.getSnapshot().status === 'away');
    shut = false;
    await until(piet, () => piet.getSnapshot().caughtUp);
    expect(piet.getSnapshot().status).toBe('live');
  });
});
