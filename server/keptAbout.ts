import { buffer } from 'node:stream/consumers';
import yazl from 'yazl';
import type { Deps } from './http/deps.ts';
import type { EnsembleName, LiveSession } from './store/door.ts';
import type { Store } from './store/store.ts';

/** More rows of a trail about one person than this are not read. Chosen, not measured. */
const MOST_ROWS = 100_000;

async function inEnsemble({ people, library, attention, log, errata, trail }: Store, { id, name }: LiveSession['person'], ensemble: EnsembleName) {
  const [here, memberships, programmes, seen, letters, written, told] = await Promise.all([people.byId(id), people.memberships(id), library.programmes(), attention.seen(id), attention.letters(id), log.rowsBy(id), trail.rows({ person: id, limit: MOST_ROWS, within: null })]);
  const parts = new Map(programmes.flatMap(({ works }) => works.flatMap((work) => work.parts.map((part) => [part.id, { work: work.title, part: part.name }]))));
  const wrongNotes = (await Promise.all(programmes.flatMap(({ works }) => works.map(async (work) => (await errata.of(work.id)).filter(({ by }) => by === name).map((one) => ({ work: work.title, ...one })))))).flat();
  return {
    ensemble: ensemble.name,
    belongs: here && { librarian: here.librarian, deputy: here.deputy },
    seats: memberships.map(({ sectionName, role, seat }) => ({ section: sectionName, role, seat })),
    seatsInProgrammes: programmes.flatMap(({ title, seatings }) => seatings.flatMap(({ seats }) => seats.filter(({ person }) => person?.id === id).map(({ seat }) => ({ programme: title, seat })))),
    letters,
    read: [...seen].map(([part, upTo]) => ({ ...parts.get(part), upTo })),
    /** Proposals, votes, comments and everything else they wrote into the logs of parts. */
    written,
    wrongNotes,
    told,
  };
}

/** Everything that is kept about whoever is signed in, as a zip with one JSON file. A sign-in for one ensemble gets that one's share, and what is the person's own. */
export async function keptAbout({ door, hall }: Pick<Deps, 'door' | 'hall'>, { person, belongings, only }: LiveSession): Promise<Buffer> {
  const left = only === null ? await door.left(person.id) : [];
  const ensembles = [...belongings.map(({ ensemble }) => ensemble), ...left];
  const [{ since, sessions, links }, hand] = await Promise.all([door.kept(person.id), door.hand(person.id)]);
  const kept = { name: person.name, since, hand, sessions, links, ensembles: await Promise.all(ensembles.map((ensemble) => inEnsemble(hall(ensemble.id).store, person, ensemble))) };
  const zip = new yazl.ZipFile();
  zip.addBuffer(Buffer.from(`${JSON.stringify(kept, null, 1)}\n`), 'kept.json');
  zip.end();
  return buffer(zip.outputStream);
}
