import { randomUUID } from 'node:crypto';
import { setTimeout as wait } from 'node:timers/promises';
import { seatsFor } from '../../../core/music/seat.ts';
import type { Store } from '../../../server/store/store.ts';
import { hashOf, inDays, newToken } from '../../../server/http/tokens.ts';
import { openHouse, type House, type Reply, type Visitor } from '../../support/house.ts';
import { layOut, type LaidOut } from '../../support/laidOut.ts';
import { inPostgres } from '../../support/oneEnsemble.ts';
import { smallPart } from '../../support/smallPart.ts';
import type { TestDatabase } from '../../support/database.ts';

/** Everybody who may come to the door, in one ensemble or another. */
export const ACTORS = [
  'signedOut',
  'librarian',
  'principal',
  'player',
  'otherPrincipal',
  'reader',
  'deputy',
  'deputyElsewhere',
  'deputyAfterwards',
  'foreignLibrarian',
  'foreignPrincipal',
  'inBoth',
  'inBothBound',
] as const;
export type ActorName = (typeof ACTORS)[number];

export const DAY_BEFORE = inDays(new Date(), -1).toISOString().slice(0, 10);
export const DAY_AFTER = inDays(new Date(), 1).toISOString().slice(0, 10);

/** Two ensembles under one roof, and what is asked about in the first. */
export interface TwoEnsembles {
  house: House;
  /** Of the first ensemble: everything is asked about these. */
  laid: LaidOut;
  foreign: LaidOut;
  foreignStore: Store;
  set: string;
  /** A fresh sign-in of somebody. */
  as(actor: ActorName): Promise<Visitor>;
  idOf(actor: Exclude<ActorName, 'signedOut'>): string;
  erratum(): Promise<string>;
  close(): Promise<void>;
}

export async function furnishTwo(database: TestDatabase): Promise<TwoEnsembles> {
  const store = await inPostgres(database);
  const { door, installation } = store;
  const other = (await door.addEnsemble('Haldane Players'))!.id;
  const foreignStore = installation.of(other);
  const laid = await layOut(store);
  const foreign = await layOut(foreignStore);
  const people = await furnishFirst(store, laid);
  const both = await store.people.add('Petra Lind', false);
  await door.join(other, both.id, { librarian: true, deputy: false });
  await seatBeside(store, laid, both.id);
  const set = randomUUID();
  await store.archive.keep([{ id: set, title: 'Spring', composer: 'T. Holmwood', ensemble: 'Varnholm Strings', conductor: 'R. Iden', season: '2025/26', bytes: new TextEncoder().encode('<score/>'), fileName: 'spring.musicxml', keptBy: laid.librarian.name, keptAt: new Date().toISOString(), parts: [] }]);
  const music = await store.library.part(laid.part);
  await store.library.addEdition(laid.work, { bytes: new TextEncoder().encode('<score2/>'), fileName: 'spring-2.musicxml', by: laid.librarian.id, at: new Date() }, [{ id: laid.part, content: music!.content, measures: null }], []);
  const house = await openHouse(store);

  const ids: Record<Exclude<ActorName, 'signedOut'>, string> = {
    librarian: laid.librarian.id,
    principal: laid.principal.id,
    player: laid.player.id,
    reader: laid.guest.id,
    ...people,
    foreignLibrarian: foreign.librarian.id,
    foreignPrincipal: foreign.principal.id,
    inBoth: both.id,
    inBothBound: both.id,
  };
  async function as(actor: ActorName): Promise<Visitor> {
    if (actor === 'signedOut') return house.visitor();
    if (actor !== 'inBothBound') return house.signIn({ id: ids[actor] });
    // As a librarian of the other ensemble could come in with a link made there.
    const token = newToken();
    await door.openSession(both.id, hashOf(token), inDays(new Date(), 1), other);
    return house.visitor(`bowline=${token}`);
  }
  return {
    house,
    laid,
    foreign,
    foreignStore,
    set,
    as,
    idOf: (actor) => ids[actor],
    erratum: async () => (await store.errata.add(laid.work, { part: 'Violin I', edition: 'spring.musicxml', measure: 1, number: '1', says: 'a', should: 'b', by: 'Ilya Brandt', at: new Date().toISOString() }))!.id,
    async close() {
      await house.close();
      await store.close();
    },
  };
}

/** Asked again while the house has its hands full: a machine that was busy reading all this in turns people away for a moment. */
export async function patiently(ask: () => Promise<Reply>): Promise<Reply> {
  for (;;) {
    const reply = await ask();
    if (reply.status !== 503) return reply;
    await wait(200);
  }
}

/** A second section with a leader of its own, and three who are there for single programmes. */
async function furnishFirst(store: Store, laid: LaidOut) {
  const [otherPrincipal, deputy, deputyElsewhere, deputyAfterwards] = await Promise.all([store.people.add('Nils Orme', false), store.people.add('Ada Quill', false, true), store.people.add('Bo Renner', false, true), store.people.add('Cleo Sand', false, true)]);
  const violas = (await store.sections.add('Violas', 'viola'))!.id;
  await store.sections.seat(violas, { seats: [{ seat: '1o', person: otherPrincipal.id }], principal: otherPrincipal.id });
  const sitIn = (programme: string, section: string, leader: string, person: string) =>
    store.sections.seatFor(programme, section, { seats: seatsFor(4).map((seat, index) => ({ seat, person: [leader, laid.player.id, person, null][index] ?? null })), principal: leader });
  const programme = (title: string, date: string) => store.library.addProgramme({ title, season: '', conductor: '', days: [{ kind: 'concert', date, time: null, words: '' }], deadlines: {} });
  const elsewhere = await programme('Summer', DAY_AFTER);
  const over = await programme('Winter', DAY_BEFORE);
  const edition = { bytes: new TextEncoder().encode('<score/>'), fileName: 'winter.musicxml', by: laid.librarian.id, at: new Date() };
  await store.library.addWork(over.id, { title: 'Winter', composer: 'T. Holmwood' }, edition, [{ content: smallPart(), section: laid.section }]);
  await sitIn(laid.programme, laid.section, laid.principal.id, deputy.id);
  await sitIn(elsewhere.id, laid.section, laid.principal.id, deputyElsewhere.id);
  await sitIn(over.id, laid.section, laid.principal.id, deputyAfterwards.id);
  return { otherPrincipal: otherPrincipal.id, deputy: deputy.id, deputyElsewhere: deputyElsewhere.id, deputyAfterwards: deputyAfterwards.id };
}

/** A place at the fourth seat of the programme, beside the deputy. */
async function seatBeside(store: Store, laid: LaidOut, person: string): Promise<void> {
  const { seatings } = (await store.library.programme(laid.programme))!;
  const own = seatings.find(({ section }) => section === laid.section)!;
  await store.sections.seatFor(laid.programme, laid.section, { seats: own.seats.map(({ seat, person: sits }) => ({ seat, person: sits?.id ?? person })), principal: laid.principal.id });
}
