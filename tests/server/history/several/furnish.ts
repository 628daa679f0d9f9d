import type { PartView, WorkView } from '../../../../core/agreement/wire/http.ts';
import { seatsFor } from '../../../../core/music/seat.ts';
import { DATABASE, APP, DOOR } from '../../../../server/database/connection.ts';
import { demoScore } from '../../../../server/demo/score/writeScore.ts';
import { makeSignInLink } from '../../../../server/http/tokens.ts';
import { openPostgres } from '../../../../server/store/postgres.ts';
import { caller, signIn, type SignedIn } from '../library.ts';
import type { Premises } from './premises.ts';

export interface Seating {
  seats: { seat: string; person: string | null }[];
  principal: string;
}

/** One of the ensembles that share the library: a librarian, a section, and the parts on its stands. */
export interface House {
  ensemble: string;
  librarian: SignedIn;
  players: SignedIn[];
  section: string;
  seating: Seating;
  programme: string;
  parts: string[];
}

const SURNAMES = ['Brandt', 'Castell', 'Ferrow', 'Grell', 'Hovden', 'Ionesco', 'Jarvis', 'Kestrel', 'Lindqvist', 'Moravec', 'Norling', 'Ostrova', 'Pellan', 'Quist', 'Rasmus', 'Selwin'];

export async function furnish(premises: Premises, ensembles: string[], players: number, works: number): Promise<House[]> {
  const { cluster, stations } = premises;
  const installation = openPostgres({ app: cluster.connection(APP, DATABASE), door: cluster.connection(DOOR, DATABASE) });
  const address = stations[0]!.server.address;
  try {
    return await Promise.all(
      ensembles.map(async (name) => {
        const ensemble = (await installation.door.addEnsemble(name))!;
        const head = await installation.of(ensemble.id).people.add(`Librarian of ${name}`, true);
        const librarian = await signIn(address, await makeSignInLink(installation.door, address, head.id, ensemble.id, new Date()));
        return fill(address, ensemble.id, librarian, players, works);
      }),
    );
  } finally {
    await installation.close();
  }
}

async function fill(address: string, ensemble: string, librarian: SignedIn, count: number, works: number): Promise<House> {
  const call = caller(address, librarian.cookie);
  const section = await call<{ id: string }>('POST', '/api/sections', { name: 'First violins', instrument: 'violin' });
  const players: SignedIn[] = [];
  for (let index = 0; index < count; index++) {
    const { link } = await call<{ link: string }>('POST', '/api/people', { name: `Player ${SURNAMES[index % SURNAMES.length]} ${index + 1}` });
    players.push(await signIn(address, link));
  }
  const seating = { seats: seatsFor(count).map((seat, index) => ({ seat, person: players[index]!.id })), principal: players[0]!.id };
  await call('PUT', `/api/sections/${section.id}/seating`, seating);
  const programme = await call<{ id: string }>('POST', '/api/programmes', { title: 'History' });
  const parts: string[] = [];
  for (let index = 0; index < works; index++) {
    const form = new FormData();
    form.set('file', new Blob([demoScore()]), `history ${index + 1}.musicxml`);
    const { work } = await call<{ work: WorkView }>('POST', `/api/programmes/${programme.id}/works`, form);
    for (const part of work.parts.filter(({ instrument }) => instrument === 'violin')) {
      await call('PUT', `/api/parts/${part.id}/section`, { section: section.id });
      parts.push(part.id);
    }
  }
  return { ensemble, librarian, players, section: section.id, seating, programme: programme.id, parts };
}

export const viewOf = (address: string, who: SignedIn, part: string): Promise<PartView> => caller(address, who.cookie)<PartView>('GET', `/api/parts/${part}`);
