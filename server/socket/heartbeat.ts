import type { Deps } from '../http/deps.ts';
import type { Followed } from './followed.ts';
import type { Presence } from './presence.ts';
import { partRoom } from './rooms.ts';
import type { LiveServer } from './types.ts';

/** What holds whether or not a hint arrived: followers hear where their part's log stands, and who was signed out elsewhere is cut off. */
export async function beatOnce(io: LiveServer, deps: Deps, presence: Presence, halls: Followed, said: Map<string, number>): Promise<void> {
  presence.repeat();
  const lately = new Map(said);
  said.clear();
  await Promise.all([sendHeads(io, halls, lately), dropSignedOut(io, deps)]).catch(() => {
    // The store is away; the next beat asks again, and every request meanwhile says so itself.
  });
}

/** Read from the store, not from memory: another process may have written. `lately`: rows that went over these very lines since the last beat; whoever had the last of them hears nothing new. */
async function sendHeads(io: LiveServer, halls: Followed, lately: ReadonlyMap<string, number>): Promise<void> {
  const parts = [...io.sockets.adapter.rooms.keys()].filter((room) => room.startsWith(partRoom(''))).map((room) => room.slice(partRoom('').length));
  for (const [hall, own] of halls.byHall(parts)) {
    for (const [part, seq] of await hall.store.log.heads(own)) {
      if (lately.get(part) !== seq) io.local.to(partRoom(part)).emit('head', { part, seq });
    }
  }
}

async function dropSignedOut(io: LiveServer, deps: Deps): Promise<void> {
  const sockets = [...io.sockets.sockets.values()];
  if (sockets.length === 0) return;
  const live = await deps.door.live([...new Set(sockets.map(({ data }) => data.session.id))], deps.now());
  for (const socket of sockets) if (!live.has(socket.data.session.id)) socket.disconnect(true);
}
