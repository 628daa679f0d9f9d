import type { Deps } from '../http/deps.ts';
import { reachOf } from '../http/reach.ts';
import type { Followed } from './followed.ts';
import { partRoom } from './rooms.ts';
import type { LiveSocket } from './types.ts';

const followedBy = (socket: LiveSocket): string[] => [...socket.rooms].filter((room) => room.startsWith(partRoom(''))).map((room) => room.slice(partRoom('').length));

/**
 * Takes from connections what their people may not open any more: they have left the ensemble, or deputise in no programme of it now. The page is told that
 * the part changed, asks for it, and hears why it is not there. One question for everybody, and further ones for deputies alone.
 */
export async function dropWhatIsOver(sockets: readonly LiveSocket[], deps: Pick<Deps, 'door' | 'hall' | 'now'>, followed: Followed): Promise<void> {
  const following = sockets.map((socket) => ({ socket, parts: followedBy(socket) })).filter(({ parts }) => parts.length);
  if (following.length === 0) return;
  const belongings = await deps.door.belongingsOf([...new Set(following.map(({ socket }) => socket.data.session.person.id))]);
  for (const { socket, parts } of following) {
    const { person, only } = socket.data.session;
    const own = (belongings.get(person.id) ?? []).filter(({ ensemble }) => only === null || ensemble.id === only);
    for (const part of parts) {
      const here = own.find(({ ensemble }) => ensemble.id === followed.ensembleOf(part));
      if (here && !here.deputy) continue;
      if (await reachOf(deps, { person, belongings: here ? [here] : own }, { kind: 'part', id: part })) continue;
      socket.emit('renewed', { part });
      socket.data.drop?.(part);
    }
  }
}
