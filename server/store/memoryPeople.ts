import { randomUUID } from 'node:crypto';
import { lastDay } from './programmeEnd.ts';
import type { People } from './people.ts';
import type { Entry, Shelves } from './shelves.ts';

export function createMemoryPeople({ people, sections, memberships, seatings, programmes }: Shelves, { persons }: Entry): People {
  return {
    async add(name, librarian, deputy = false) {
      const person = { id: randomUUID(), name, librarian, deputy };
      persons.set(person.id, { id: person.id, name });
      people.set(person.id, person);
      return person;
    },
    byId: async (id) => people.get(id) ?? null,
    all: async () => [...people.values()],

    async memberships(person) {
      const order = [...sections.keys()];
      const mine = memberships.filter((member) => member.person === person).sort((a, b) => order.indexOf(a.section) - order.indexOf(b.section));
      return mine.map((member) => ({ section: member.section, sectionName: sections.get(member.section)!.name, role: member.principal ? 'principal' : 'player', seat: member.seat }));
    },

    async seatedIn(person, day) {
      const seated = [...seatings.values()].filter(({ members }) => members.some((member) => member.person === person)).map(({ programme }) => programme);
      return [...new Set(seated)].filter((programme) => (lastDay(programmes.get(programme)!) ?? day) >= day);
    },
  };
}
