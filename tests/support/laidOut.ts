import { randomUUID } from 'node:crypto';
import { seatsFor } from '../../core/music/seat.ts';
import type { Person } from '../../server/store/people.ts';
import type { Store } from '../../server/store/store.ts';
import { smallPart } from './smallPart.ts';

export interface LaidOut {
  librarian: Person;
  /** Leads the section, desk 1 outside. */
  principal: Person;
  /** Desk 1 inside. */
  player: Person;
  /** In no section. */
  guest: Person;
  section: string;
  programme: string;
  work: string;
  part: string;
}

/** A section of four with three people in it, and a work of one part on its stands. Names are new each time. */
export async function layOut(store: Store): Promise<LaidOut> {
  const [librarian, principal, player, guest] = await Promise.all([store.people.add('Lena Ashgrove', true), store.people.add('Ilya Brandt', false), store.people.add('Mona Castell', false), store.people.add('Jon Ferrow', false)]);
  const section = (await store.sections.add(`First violins ${randomUUID()}`, 'violin'))!.id;
  const people = [principal!.id, player!.id, null, null];
  await store.sections.seat(section, { seats: seatsFor(4).map((seat, index) => ({ seat, person: people[index]! })), principal: principal!.id });
  const programme = await store.library.addProgramme({ title: 'Spring', season: '', conductor: '', days: [{ kind: 'rehearsal', date: '2027-03-01', time: null, words: '' }], deadlines: {} });
  const edition = { bytes: new TextEncoder().encode('<score/>'), fileName: 'spring.musicxml', by: librarian!.id, at: new Date('2026-11-25T12:00:00Z') };
  const work = (await store.library.addWork(programme.id, { title: 'Spring', composer: 'T. Holmwood' }, edition, [{ content: smallPart(), section }]))!;
  return { librarian: librarian!, principal: principal!, player: player!, guest: guest!, section, programme: programme.id, work: work.id, part: work.parts[0]!.id };
}

/** Input of a proposal of one mark on the first note. */
export const oneMark = (id: string = randomUUID()) => ({ id, from: 1, to: 1, seats: 'all', why: 'It speaks better.', marks: [{ note: 'P1n1', value: { kind: 'finger', finger: 1 } }] });
