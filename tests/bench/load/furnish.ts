import type { Part } from '../../../core/music/part.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { hashOf, inDays, newToken } from '../../../server/http/tokens.ts';
import type { Asker } from '../../../server/store/partLog.ts';
import type { Store } from '../../../server/store/store.ts';

export interface Player extends Asker {
  name: string;
  session: string;
  /** What their browser would send. */
  cookie: string;
  seat: string;
}

export interface FurnishedSection {
  players: Player[];
  /** Ids of the parts on its stands. */
  parts: string[];
}

/** A section with everybody signed in, whoever leads it first, and one work laid on its stands, a part for each of `parts`. */
export async function furnishSection(store: Store, name: string, size: number, parts: readonly Part[]): Promise<FurnishedSection> {
  const section = (await store.sections.add(name, 'violin'))!;
  const players = await Promise.all(seatsFor(size).map((seat) => signInNew(store, `${name}, ${seat}`, seat)));
  await store.sections.seat(section.id, { seats: players.map(({ seat, person }) => ({ seat, person })), principal: players[0]!.person });
  const programme = await store.library.addProgramme({ title: name, season: '', conductor: '', days: [], deadlines: {} });
  const edition = { bytes: new TextEncoder().encode('<score/>'), fileName: 'load.musicxml', by: players[0]!.person, at: new Date() };
  const work = (await store.library.addWork(programme.id, { title: name, composer: 'T. Holmwood' }, edition, parts.map((content) => ({ content, section: section.id }))))!;
  return { players, parts: work.parts.map(({ id }) => id) };
}

async function signInNew(store: Store, name: string, seat: string): Promise<Player> {
  const person = await store.people.add(name, false);
  const token = newToken();
  const session = await store.people.openSession(person.id, hashOf(token), inDays(new Date(), 1));
  return { person: person.id, name, session, cookie: `bowline=${token}`, seat };
}
