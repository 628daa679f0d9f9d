import { randomUUID } from 'node:crypto';
import type { People } from './people.ts';
import { hex, type Shelves } from './shelves.ts';

export function createMemoryPeople({ people, links, sessions, sections, memberships, hands }: Shelves): People {
  return {
    async add(name, librarian) {
      const person = { id: randomUUID(), name, librarian };
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

    async addLink(person, tokenHash, expires) {
      links.set(hex(tokenHash), { person, expires, used: false });
    },

    async useLink(tokenHash, now) {
      const link = links.get(hex(tokenHash));
      if (!link || link.used || link.expires <= now) return null;
      link.used = true;
      return people.get(link.person) ?? null;
    },

    async openSession(person, tokenHash, expires) {
      const id = randomUUID();
      sessions.set(hex(tokenHash), { id, person, expires, revoked: false });
      return id;
    },

    async session(tokenHash, now) {
      const session = sessions.get(hex(tokenHash));
      return !session || session.revoked || session.expires <= now ? null : { id: session.id, person: people.get(session.person)! };
    },

    hand: async (person) => hands.get(person) ?? null,
    async setHand(person, hand) {
      if (hand) hands.set(person, hand);
      else hands.delete(person);
    },

    async revoke(id) {
      for (const session of sessions.values()) if (session.id === id) session.revoked = true;
    },
  };
}
