import type { Part } from '../../../core/music/part.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { hashOf, inDays, newToken } from '../../../server/http/tokens.ts';
import type { Asker } from '../../../server/store/partLog.ts';
import type { OneEnsemble } from '../../support/oneEnsemble.ts';

export interface Player extends Asker {
  name: string;
  session: string;
  /** What their browser would send. */
  cookie: string;
  seat: string;
}

export interface FurnishedSection {
  id: string;
  programme: string;
  /** Whoever leads it first. */
  players: Player[];
}

/** A section with everybody signed in, and a programme of its own. */
export async function furnishSection(store: OneEnsemble, name: string, size: number): Promise<FurnishedSection> {
  const section = (await store.sections.add(name, 'violin'))!;
  const players = await Promise.all(seatsFor(size).map((seat) => signInNew(store, `${name}, ${seat}`, seat)));
  await store.sections.seat(section.id, { seats: players.map(({ seat, person }) => ({ seat, person })), principal: players[0]!.person });
  const programme = await store.library.addProgramme({ title: name, season: '', conductor: '', days: [], deadlines: {} });
  return { id: section.id, programme: programme.id, players };
}

/** A work whose parts lie on the section's stands; their ids. The text of the edition is what the engraver gets. */
export async function layParts(store: OneEnsemble, { id, programme, players }: FurnishedSection, parts: readonly Part[], text = '<score/>'): Promise<string[]> {
  const edition = { bytes: new TextEncoder().encode(text), fileName: 'load.musicxml', by: players[0]!.person, at: new Date() };
  const work = (await store.library.addWork(programme, { title: 'Load', composer: 'T. Holmwood' }, edition, parts.map((content) => ({ content, section: id }))))!;
  return work.parts.map((part) => part.id);
}

async function signInNew(store: OneEnsemble, name: string, seat: string): Promise<Player> {
  const person = await store.people.add(name, false);
  const token = newToken();
  const session = await store.door.openSession(person.id, hashOf(token), inDays(new Date(), 1), null);
  return { person: person.id, name, session, cookie: `bowline=${token}`, seat };
}
