import { randomUUID } from 'node:crypto';
import type { SectionView } from '../../core/agreement/wire/http.ts';
import { seatedIn } from '../../core/agreement/seating.ts';
import type { ProgrammeSeating } from '../../core/agreement/wire/programme.ts';
import { membersOf, planFits, type Member, type Sections } from './sections.ts';
import { rowOf } from './memoryTrail.ts';
import { seatingView } from './seatingRows.ts';
import type { Shelves } from './shelves.ts';

/** One key for a programme and a section. */
const keyOf = (programme: string, section: string): string => `${programme} ${section}`;

export function createMemorySections({ people, sections, memberships, parts, works, programmes, seatings, trail }: Shelves): Sections {
  const known = (members: Member[]) => members.every(({ person }) => people.has(person));

  function view(id: string): SectionView | null {
    const section = sections.get(id);
    if (!section) return null;
    return { ...section, ...seatingView(section.seats, named(people, memberships.filter((member) => member.section === id))) };
  }

  return {
    async add(name, instrument, by = null) {
      if ([...sections.values()].some((section) => section.name === name)) return null;
      const section = { id: randomUUID(), name, instrument, seats: [], settings: {} };
      sections.set(section.id, section);
      trail.push(rowOf({ kind: 'sectionAdded', section: section.id, facts: { section: name } }, by));
      return view(section.id);
    },
    all: async () => [...sections.keys()].map((id) => view(id)!),
    byId: async (id) => view(id),

    async seat(id, plan, by = null) {
      const section = sections.get(id);
      const seated = membersOf(plan).map((member) => ({ ...member, section: id }));
      if (!section || !planFits(plan) || !known(seated) || seated.some(({ person }) => people.get(person)!.deputy)) return false;
      const others = memberships.filter((member) => member.section !== id);
      memberships.splice(0, memberships.length, ...others, ...seated);
      section.seats = plan.seats.map((place) => place.seat);
      trail.push(rowOf({ kind: 'seatingChanged', section: id, facts: { section: section.name } }, by));
      return true;
    },

    async seatFor(programme, section, plan, by = null) {
      if (!programmes.has(programme) || !sections.has(section)) return false;
      const key = keyOf(programme, section);
      if (plan === null) seatings.delete(key);
      else if (!planFits(plan) || !known(membersOf(plan))) return false;
      else seatings.set(key, { programme, section, seats: plan.seats.map(({ seat }) => seat), members: membersOf(plan) });
      trail.push(rowOf({ kind: 'seatingChanged', section, facts: { section: sections.get(section)!.name, programme: programmes.get(programme)!.title } }, by));
      return true;
    },

    async ofPart(id) {
      const part = parts.get(id);
      if (!part || part.section === null) return null;
      return seatedIn(view(part.section)!, seatingsOf({ people, seatings }, works.get(part.work)!.programme));
    },

    async set(id, settings, by = null) {
      const section = sections.get(id);
      if (!section) return false;
      section.settings = settings;
      trail.push(rowOf({ kind: 'settingsChanged', section: id, facts: { section: section.name } }, by));
      return true;
    },

    parts: async (section) => [...parts.values()].filter((part) => part.section === section).map((part) => part.id),
  };
}

const named = (people: Shelves['people'], members: readonly Member[]) => members.map((member) => ({ ...member, person: { id: member.person, name: people.get(member.person)!.name } }));

/** The seatings of one programme's own. */
export function seatingsOf({ people, seatings }: Pick<Shelves, 'people' | 'seatings'>, programme: string): ProgrammeSeating[] {
  const own = [...seatings.values()].filter((one) => one.programme === programme);
  return own.map(({ section, seats, members }) => ({ section, ...seatingView(seats, named(people, members)) }));
}
