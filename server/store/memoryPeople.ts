import { randomUUID } from 'node:crypto';
import { rowOf } from './memoryTrail.ts';
import { lastDay } from './programmeEnd.ts';
import type { NotChanged, People } from './people.ts';
import { newsOfStanding, standingWord } from './standingNews.ts';
import type { Entry, Shelves } from './shelves.ts';

export function createMemoryPeople({ people, sections, memberships, seatings, programmes, departures, trail }: Shelves, { persons }: Entry): People {
  const lacks = (id: string, librarian: boolean): NotChanged | null => {
    if (!people.has(id)) return 'notHere';
    return !librarian && people.get(id)!.librarian && [...people.values()].filter((one) => one.librarian).length === 1 ? 'lastLibrarian' : null;
  };
  const giveUpSeats = (id: string) => memberships.splice(0, memberships.length, ...memberships.filter((member) => member.person !== id));

  return {
    async add(name, librarian, deputy = false, by = null) {
      const person = { id: randomUUID(), name, librarian, deputy: deputy && !librarian };
      persons.set(person.id, { id: person.id, name });
      people.set(person.id, person);
      trail.push(rowOf({ kind: 'personAdded', about: person, facts: { as: standingWord(person) } }, by));
      return person;
    },
    async stand(id, { librarian, deputy }, by = null) {
      const lack = lacks(id, librarian);
      if (lack) return lack;
      const before = people.get(id)!;
      const person = { ...before, librarian, deputy: deputy && !librarian };
      people.set(id, person);
      if (person.deputy) giveUpSeats(id);
      for (const news of newsOfStanding(before, person)) trail.push(rowOf({ ...news, about: person }, by));
      return person;
    },
    async leave(id, by = null) {
      const lack = lacks(id, false);
      if (lack) return lack;
      const person = people.get(id)!;
      giveUpSeats(id);
      for (const seating of seatings.values()) seating.members = seating.members.filter((member) => member.person !== id);
      people.delete(id);
      departures.set(id, new Date());
      trail.push(rowOf({ kind: 'personLeft', about: person }, by));
      return null;
    },
    gone: async () => [...departures].map(([id, leftAt]) => ({ ...persons.get(id)!, leftAt })).reverse(),
    async comeBack(id, { librarian, deputy }, by = null) {
      if (!departures.delete(id)) return null;
      const person = { ...persons.get(id)!, librarian, deputy: deputy && !librarian };
      people.set(id, person);
      trail.push(rowOf({ kind: 'personBack', about: person, facts: { as: standingWord(person) } }, by));
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
