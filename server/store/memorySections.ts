import { randomUUID } from 'node:crypto';
import type { SectionView } from '../../core/agreement/wire/http.ts';
import { membersOf, planFits, type Sections } from './sections.ts';
import type { Shelves } from './shelves.ts';

export function createMemorySections({ people, sections, memberships, parts }: Shelves): Sections {
  const who = (id: string) => ({ id, name: people.get(id)!.name });

  function view(id: string): SectionView | null {
    const section = sections.get(id);
    if (!section) return null;
    const members = memberships.filter((member) => member.section === id);
    const principal = members.find((member) => member.principal);
    const seats = section.seats.map((seat) => {
      const member = members.find((one) => one.seat === seat);
      return { seat, person: member ? who(member.person) : null };
    });
    return { ...section, seats, principal: principal ? who(principal.person) : null };
  }

  return {
    async add(name, instrument) {
      if ([...sections.values()].some((section) => section.name === name)) return null;
      const section = { id: randomUUID(), name, instrument, seats: [], settings: {} };
      sections.set(section.id, section);
      return view(section.id);
    },
    all: async () => [...sections.keys()].map((id) => view(id)!),
    byId: async (id) => view(id),

    async seat(id, plan) {
      const section = sections.get(id);
      const seated = membersOf(plan).map((member) => ({ ...member, section: id }));
      if (!section || !planFits(plan) || seated.some((member) => !people.has(member.person))) return false;
      const others = memberships.filter((member) => member.section !== id);
      memberships.splice(0, memberships.length, ...others, ...seated);
      section.seats = plan.seats.map((place) => place.seat);
      return true;
    },

    async set(id, settings) {
      const section = sections.get(id);
      if (section) section.settings = settings;
      return section !== undefined;
    },

    parts: async (section) => [...parts.values()].filter((part) => part.section === section).map((part) => part.id),
  };
}
