import type { WorkView } from '../../core/agreement/wire/http.ts';
import type { ProgrammeDay } from '../../core/agreement/wire/programme.ts';
import { seatsFor } from '../../core/music/seat.ts';
import type { Authority } from '../operations/authority.ts';
import type { Person } from '../store/people.ts';
import type { Store } from '../store/store.ts';
import { ENSEMBLE, LIBRARIAN, PARTNER, PRINCIPAL } from './ensemble.ts';
import { Scene } from './scene.ts';
import { demoScore } from './score/writeScore.ts';
import { firstViolins, secondViolins } from './story.ts';

export interface DemoDeps {
  store: Store;
  /** The same way an uploaded score takes. */
  layScore(programme: string, file: { bytes: Uint8Array; fileName: string }, by: Person): Promise<WorkView>;
  authority: Authority;
  /** A one-time address that signs this person in. */
  signInLink(person: Person): Promise<string>;
}

export interface DemoAnswer {
  /** False when there was something in the database already: nothing was written. */
  filled: boolean;
  /** Empty when the database holds other people than the demo's. */
  links: { role: string; name: string; url: string }[];
}

const DAY = 24 * 60 * 60 * 1000;
const dayFromNow = (days: number): string => new Date(Date.now() + days * DAY).toISOString().slice(0, 10);
const day = (kind: ProgrammeDay['kind'], days: number): ProgrammeDay => ({ kind, date: dayFromNow(days), time: null, words: '' });
const GUIDES = [['principal', PRINCIPAL], ['player', PARTNER], ['librarian', LIBRARIAN]] as const;

async function seatEverybody(store: Store): Promise<Map<string, string>> {
  const ids = new Map<string, string>();
  for (const { name, instrument, players } of ENSEMBLE) {
    const section = await store.sections.add(name, instrument);
    if (!section) throw new Error(`The demo could not be filled: there is a section ${name} already`);
    for (const player of players) ids.set(player, (await store.people.add(player, false)).id);
    const seats = seatsFor(players.length).map((seat, i) => ({ seat, person: ids.get(players[i]!)! }));
    await store.sections.seat(section.id, { seats, principal: seats[0]!.person });
  }
  return ids;
}

async function tellTheStory({ store, authority }: DemoDeps, work: WorkView, ids: Map<string, string>): Promise<void> {
  const stories = { 'Violin I': firstViolins, 'Violin II': (scene: Scene, part: Parameters<typeof secondViolins>[1]) => secondViolins(scene, part, ENSEMBLE[1]!.players[0]!) };
  for (const [name, story] of Object.entries(stories)) {
    const id = work.parts.find((part) => part.name === name)!.id;
    const { content } = (await store.library.part(id))!;
    await story(new Scene(authority, id, ids), content);
  }
}

/** Fills an empty database with the Varnholm Strings, their programme and the first week of work on it; then, or when they are there already, gives links to come in by. */
export async function fillDemo(deps: DemoDeps): Promise<DemoAnswer> {
  const { store } = deps;
  const empty = (await store.library.programmes()).length === 0 && (await store.sections.all()).length === 0;
  if (empty) {
    const librarian = await store.people.add(LIBRARIAN, true);
    const ids = await seatEverybody(store);
    const programme = await store.library.addProgramme({ title: 'Varnholm Strings: Tide Tables', season: '', conductor: '', days: [day('rehearsal', 12), day('concert', 16)], deadlines: { withPrincipal: dayFromNow(-3), roundSection: dayFromNow(2), inkedIn: dayFromNow(6), onStands: dayFromNow(9) } });
    const work = await deps.layScore(programme.id, { bytes: new TextEncoder().encode(demoScore()), fileName: 'low-water.musicxml' }, librarian);
    await tellTheStory(deps, work, ids);
  }
  const people = await store.people.all();
  const links: DemoAnswer['links'] = [];
  for (const [role, name] of GUIDES) {
    const person = people.find((one) => one.name === name);
    if (person) links.push({ role, name, url: await deps.signInLink(person) });
  }
  return { filled: empty, links };
}
