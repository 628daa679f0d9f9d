import type { SeatId } from '../../core/music/seat.ts';
import { PROTOCOL } from '../../core/agreement/wire/socket.ts';
import { askerKey, MOVED, type Asker, type Ground, type PartLog } from './partLog.ts';
import { rolesOf } from './rolesOf.ts';
import type { Member } from './sections.ts';
import { dayStill, lastDay } from './programmeEnd.ts';
import type { Entry, MemoryPart, Shelves } from './shelves.ts';

/** After every ISO date. */
const TODAY_OR_LATER = '~';

/** Nothing awaits between reading and writing, so one commit is one step for everybody else. */
export function createMemoryLog({ people, programmes, sections, memberships, parts, works, seatings, refused }: Shelves, { sessions }: Entry): PartLog {
  /** Seats and members for a part: of its programme's own seating, else as usual. */
  function seatingOf({ section, work }: MemoryPart): { seats: SeatId[]; members: Member[] } {
    if (section === null) return { seats: [], members: [] };
    const { programme } = works.get(work)!;
    const own = [...seatings.values()].find((one) => one.programme === programme && one.section === section);
    const over = (lastDay(programmes.get(programme)!) ?? TODAY_OR_LATER) < dayStill(new Date());
    if (own && over) return { seats: own.seats, members: own.members.filter(({ person }) => !people.get(person)?.deputy) };
    return own ?? { seats: sections.get(section)!.seats, members: memberships.filter((one) => one.section === section) };
  }

  function actorsFor(members: readonly Member[], askers: Asker[]): Ground['actors'] {
    const signedIn = ({ person, session }: Asker) =>
      session === null || [...sessions.values()].some((one) => one.id === session && one.person === person && !one.revoked && one.expires > new Date());
    const actors: Ground['actors'] = new Map();
    for (const asker of askers) {
      const person = people.get(asker.person);
      if (!person || !signedIn(asker)) continue;
      const member = members.find((one) => one.person === person.id);
      actors.set(askerKey(asker), { id: person.id, name: person.name, roles: rolesOf(person.librarian, member ? member.principal : null), seat: member?.seat ?? null });
    }
    return actors;
  }

  function knownAmong(operations: string[]): Ground['known'] {
    const known: Ground['known'] = new Map();
    for (const operation of operations) {
      const row = refused.get(operation);
      if (row) known.set(operation, row);
      for (const part of parts.values()) {
        const entry = part.log.find((one) => one.operation === operation);
        if (entry) known.set(operation, { part: part.id, entry });
      }
    }
    return known;
  }

  return {
    async commit(id, expected, askers, operations, decide) {
      const part = parts.get(id);
      if (!part) return null;
      if (part.log.length !== expected.head || part.revision !== expected.revision || part.rewritten !== (expected.rewritten ?? 0)) return MOVED;
      const { seats, members } = seatingOf(part);
      const ruling = decide({ seats, actors: actorsFor(members, askers), known: knownAmong(operations) });
      ruling.refused.forEach((row) => refused.set(row.operation, row));
      if (ruling.entries.length) part.shelf = ruling.shelf;
      part.log.push(...ruling.entries);
      if (ruling.snapshot) part.snapshots.push({ state: ruling.snapshot, protocol: PROTOCOL });
      return ruling;
    },
    async entries(id, after, limit) {
      const part = parts.get(id);
      return part ? { head: part.log.length, entries: part.log.slice(after, after + limit) } : null;
    },
    async rowsBy(person) {
      const own = [...parts.values()].flatMap((part) => part.log.filter(({ by }) => by === person).map(({ operation, name, input, at }) => ({ operation, name, input, at, work: works.get(part.work)!.title, part: part.content.name })));
      return own.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
    },
    heads: async (ids) => new Map(ids.flatMap((id) => (parts.has(id) ? [[id, parts.get(id)!.log.length] as const] : []))),
    async place(id) {
      const part = parts.get(id);
      return part ? { head: part.log.length, revision: part.revision, rewritten: part.rewritten } : null;
    },
    snapshot: async (id, protocol) => parts.get(id)?.snapshots.findLast((one) => one.protocol === protocol)?.state ?? null,
  };
}
