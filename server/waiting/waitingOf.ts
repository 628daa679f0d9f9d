import { numberAt } from '../../core/music/printedNumber.ts';
import { placeIn, seatedIn } from '../../core/agreement/seating.ts';
import { waitsFor, type Waiting } from '../../core/agreement/waiting/waitsFor.ts';
import type { WaitingView } from '../../core/agreement/wire/http.ts';
import { firstDay } from '../../core/season/days.ts';
import type { House } from '../operations/partNow.ts';
import { rolesOf } from '../store/rolesOf.ts';

/** What waits in one part, and what decides when it is told. */
export interface WaitingPart {
  part: WaitingView['parts'][number];
  head: number;
  /** ISO day. */
  firstRehearsal: string | null;
}

const measuresOf = (one: Waiting): number[] => (one.kind === 'named' ? [one.measure] : [one.measure, one.from]);

async function numbersOf({ store }: House, part: string, waits: readonly Waiting[]): Promise<Record<number, string>> {
  const measures = (await store.library.part(part))?.content.measures ?? [];
  return Object.fromEntries(waits.flatMap(measuresOf).map((ordinal) => [ordinal, numberAt({ measures }, ordinal)]));
}

/** What waits for a person, in the programmes they may open (null: all), in the parts of their sections, in the order of the shelf; also parts where nothing does. `since`: last row known, by part. */
export async function waitingOf(house: House, person: { id: string; librarian: boolean; programmes: ReadonlySet<string> | null }, since: ReadonlyMap<string, number>): Promise<WaitingPart[]> {
  const { library, sections } = house.store;
  const [programmes, usual] = await Promise.all([library.programmes(), sections.all()]);
  const all = programmes.filter(({ id }) => person.programmes?.has(id) ?? true).flatMap((programme) => programme.works.flatMap((work) => work.parts.map((part) => ({ programme, work, part }))));
  const found: WaitingPart[] = [];
  for (const { programme, work, part } of all) {
    const section = usual.find(({ id }) => id === part.section?.id);
    const mine = section && placeIn(seatedIn(section, programme.seatings), person.id);
    const current = mine && part.head > 0 ? await house.authority.current(part.id) : null;
    if (!mine || !current) continue;
    const waits = waitsFor(current.state, { id: person.id, roles: rolesOf(person.librarian, mine.principal) }, since.get(part.id) ?? 0);
    const numbers = waits.length ? await numbersOf(house, part.id, waits) : {};
    found.push({ part: { id: part.id, name: part.name, work: { id: work.id, title: work.title }, programme: programme.id, waits, numbers }, head: current.place.head, firstRehearsal: firstDay(programme.days, 'rehearsal') });
  }
  return found;
}
