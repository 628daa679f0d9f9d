import type { FastifyInstance } from 'fastify';
import { Server } from 'socket.io';
import type { Deps } from '../http/deps.ts';
import { isForeign } from '../http/origin.ts';
import { findSession } from '../http/session.ts';
import type { LiveSession } from '../store/door.ts';
import { cookieOf } from './cookie.ts';
import { converse } from './converse.ts';
import { createFollowed, type Followed } from './followed.ts';
import { createPresence } from './presence.ts';
import { partRoom, sessionRoom } from './rooms.ts';
import type { LiveServer } from './types.ts';

export interface SocketOptions {
  /** Milliseconds between two heads sent to followers. */
  heartbeat?: number;
}

const HEARTBEAT = 5000;

/** The live face. Broadcasts are hints: followers fill gaps by sequence number. */
export function attachSocket(app: FastifyInstance, deps: Deps, { heartbeat = HEARTBEAT }: SocketOptions): void {
  const io: LiveServer = new Server(app.server, {
    path: '/socket',
    serveClient: false,
    maxHttpBufferSize: 1024 * 1024,
    pingInterval: 10_000,
    pingTimeout: 10_000,
    // Checked here and not by `cors`, which only tells browsers what they may read.
    allowRequest: (request, answer) => {
      if (isForeign(request.headers, deps.origin)) return answer('This came from a page of another site.', false);
      sessionOf(request.headers.cookie).then(
        (session) => answer(session ? null : 'Not signed in.', session !== null),
        () => answer('The library cannot reach its shelves just now.', false),
      );
    },
  });
  const sessionOf = (cookies: string | undefined): Promise<LiveSession | null> => findSession(deps, cookieOf(cookies, deps.origin));
  const halls = createFollowed(deps);
  const presence = createPresence((part, people) => io.to(partRoom(part)).emit('present', { part, people }));

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
    converse(socket, deps, presence, halls);
  });

  deps.notices.listen({
    logged: (part, entries) => io.to(partRoom(part)).emit('logged', { part, entries }),
    renewed: (parts) => parts.forEach((part) => io.to(partRoom(part)).emit('renewed', { part })),
    signedOut: (session) => io.in(sessionRoom(session)).disconnectSockets(true),
  });
  const beat = setInterval(() => void sendHeads(io, halls), heartbeat);
  app.addHook('preClose', async () => {
    clearInterval(beat);
    presence.stop();
    await io.close();
  });
}

/** Read from the store, not from memory: another process may have written. */
async function sendHeads(io: LiveServer, halls: Followed): Promise<void> {
  const parts = [...io.sockets.adapter.rooms.keys()].filter((room) => room.startsWith(partRoom(''))).map((room) => room.slice(partRoom('').length));
  if (parts.length === 0) return;
  try {
    for (const [hall, own] of halls.byHall(parts)) {
      for (const [part, seq] of await hall.store.log.heads(own)) io.to(partRoom(part)).emit('head', { part, seq });
    }
  } catch {
    // The store is away; the next beat asks again, and every request meanwhile says so itself.
  }
}
