import { randomUUID } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { FastifyInstance } from 'fastify';
import { Server, type ServerOptions } from 'socket.io';
import type { Deps } from '../http/deps.ts';
import { isForeign } from '../http/origin.ts';
import { findSession } from '../http/session.ts';
import type { LiveSession } from '../store/door.ts';
import { isUnavailable } from '../store/unavailable.ts';
import { cookieOf } from './cookie.ts';
import { converse } from './converse.ts';
import { createFollowed } from './followed.ts';
import { beatOnce } from './heartbeat.ts';
import { createPresence } from './presence.ts';
import { partRoom, sessionRoom } from './rooms.ts';
import { dropWhatIsOver } from './stillThere.ts';
import type { LiveServer, LiveSocket, LiveTools } from './types.ts';

export interface SocketOptions {
  /** Milliseconds between two heads sent to followers. */
  heartbeat?: number;
  /** How hints reach the followers on other servers; without it there is one server. */
  adapter?: ServerOptions['adapter'];
  /** Given a way to count the lines that are open. */
  counted?: (open: () => number) => void;
}

const HEARTBEAT = 5000;
/** Beats after which another server's people are no longer thought to be there. */
const SILENT_BEATS = 3;

/** The live face. Broadcasts are hints: followers fill gaps by sequence number. */
export function attachSocket(app: FastifyInstance, deps: Deps, { heartbeat = HEARTBEAT, adapter, counted, ...tools }: SocketOptions & LiveTools): void {
  const { draining } = tools;
  const io: LiveServer = new Server(app.server, {
    path: '/socket',
    serveClient: false,
    maxHttpBufferSize: 1024 * 1024,
    pingInterval: 10_000,
    pingTimeout: 10_000,
    ...(adapter ? { adapter } : {}),
    // Checked here and not by `cors`, which only tells browsers what they may read.
    allowRequest: (request, answer) => {
      if (isForeign(request.headers, deps.origin)) return answer('This came from a page of another site.', false);
      if (draining.leaving) return answer('This server is about to stop; another one answers.', false);
      sessionOf(request.headers.cookie).then(
        (session) => answer(session ? null : 'Not signed in.', session !== null),
        () => answer('The library cannot reach its shelves just now.', false),
      );
    },
  });
  // The handshake is asked above; a page of another site writes into no connection of ours either, should it know its name.
  io.engine.use((request: IncomingMessage, answer: ServerResponse, next: () => void) => {
    if (!isForeign(request.headers, deps.origin)) return next();
    answer.writeHead(403, { 'content-type': 'application/json' });
    answer.end('{"code":4,"message":"This came from a page of another site."}');
  });
  const sessionOf = (cookies: string | undefined): Promise<LiveSession | null> => findSession(deps, cookieOf(cookies, deps.origin));
  const halls = createFollowed(deps);
  counted?.(() => io.sockets.sockets.size);
  /** By part, the last row that went to its followers here since the last beat. */
  const said = new Map<string, number>();
  const name = randomUUID();
  const presence = createPresence({
    send: (part, people) => io.local.to(partRoom(part)).emit('present', { part, people }),
    tellOthers: (part, people) => void (adapter && io.serverSideEmit('lookingElsewhere', name, part, people)),
    forget: SILENT_BEATS * heartbeat,
  });

  /** Whether those who follow parts may still: read anew at every beat, since a programme's last day goes by without anybody doing anything. */
  async function lookAgain(whom: (socket: LiveSocket) => boolean): Promise<void> {
    try {
      await dropWhatIsOver([...io.sockets.sockets.values()].filter(whom), deps, halls);
    } catch (reason) {
      // While the store is away nothing new comes from it either, and the next beat looks again.
      if (!isUnavailable(reason)) deps.log('Who may follow could not be looked at.', reason);
    }
  }

  io.use((socket, next) => {
    sessionOf(socket.handshake.headers.cookie).then(
      (session) => {
        if (!session) return next(new Error('Not signed in.'));
        socket.data.session = session;
        next();
      },
      () => next(new Error('The library cannot reach its shelves just now.')),
    );
  });
  io.on('connection', (socket) => {
    void socket.join(sessionRoom(socket.data.session.id));
    converse(socket, deps, presence, halls, tools);
  });

  deps.notices.listen({
    logged(part, entries, ours) {
      (ours ? io : io.local).to(partRoom(part)).emit('logged', { part, entries });
      // By way of Redis it goes out once Redis has it, which may be never.
      if (!ours || !adapter) said.set(part, entries.at(-1)!.seq);
    },
    renewed(parts, everywhere) {
      // A seating that changed may have ended what a deputy was there for.
      void lookAgain((socket) => parts.some((part) => socket.rooms.has(partRoom(part))));
      for (const part of parts) io.local.to(partRoom(part)).emit('renewed', { part });
      if (adapter && !everywhere) io.serverSideEmit('renewedElsewhere', parts);
    },
    left(person, elsewhere) {
      void lookAgain((socket) => socket.data.session.person.id === person);
      if (adapter && !elsewhere) io.serverSideEmit('leftElsewhere', person);
    },
    signedOut: (session) => io.in(sessionRoom(session)).disconnectSockets(true),
  });
  io.on('lookingElsewhere', (server, part, people) => presence.heard(server, part, people));
  io.on('renewedElsewhere', (parts) => deps.notices.renewed(parts, true));
  io.on('leftElsewhere', (person) => deps.notices.left(person, true));
  const beat = setInterval(() => void lookAgain(() => true).then(() => beatOnce(io, deps, presence, halls, said)), heartbeat);
  // A line that is cut and not hung up is taken up again by the page at once, with another server.
  draining.add(() => io.sockets.sockets.forEach((socket) => socket.conn.close()));
  app.addHook('preClose', async () => {
    clearInterval(beat);
    presence.stop();
    await io.close();
  });
}
