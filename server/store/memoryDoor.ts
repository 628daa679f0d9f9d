import { randomUUID } from 'node:crypto';
import { createMemoryWays } from './memoryWays.ts';
import { HANDED_OUT, UNKNOWN, type Belonging, type Door } from './door.ts';
import { hex, type Entry } from './shelves.ts';

/** Nothing awaits between reading and writing, so one call is one step for everybody else. */
export function createMemoryDoor(entry: Entry): Door {
  const { persons, ensembles, links, sessions, hands } = entry;
  const belongingsOf = (person: string): Belonging[] =>
    [...ensembles.values()].flatMap(({ id, name, shelves }) => {
      const here = shelves.people.get(person);
      return here ? [{ ensemble: { id, name }, librarian: here.librarian, deputy: here.deputy }] : [];
    });
  const holds = (session: { expires: Date; revoked: boolean } | undefined, now: Date): boolean => session !== undefined && !session.revoked && session.expires > now;

  return {
    ...createMemoryWays(entry),

    person: async (id) => persons.get(id) ?? null,

    async addEnsemble(name) {
      if ([...ensembles.values()].some((one) => one.name === name)) return null;
      const { id } = ensembles.open(randomUUID(), name);
      return { id, name };
    },
    ensembles: async () => [...ensembles.values()].map(({ id, name }) => ({ id, name })),
    async nameEnsemble(id, name) {
      const ensemble = ensembles.get(id);
      if (!ensemble || [...ensembles.values()].some((one) => one.name === name && one.id !== id)) return false;
      ensemble.name = name;
      return true;
    },
    async join(ensemble, person, standing) {
      ensembles.get(ensemble)!.shelves.people.set(person, { ...persons.get(person)!, ...standing });
    },

    belongings: async (person) => belongingsOf(person),

    async addLink(person, tokenHash, expires, ensemble, more = HANDED_OUT) {
      links.set(hex(tokenHash), { ...more, id: randomUUID(), person, expires, used: false, ensemble });
    },
    async useLink(tokenHash, now) {
      const link = links.get(hex(tokenHash));
      if (!link || link.used || link.expires <= now) return null;
      link.used = true;
      return { person: persons.get(link.person)!, ensemble: link.ensemble, invitation: link.invitation, letter: link.letter };
    },

    async openSession(person, tokenHash, expires, only, { at = new Date(), ...coming } = UNKNOWN) {
      const id = randomUUID();
      sessions.set(hex(tokenHash), { ...coming, id, person, expires, revoked: false, open: only, only, begun: at, used: at, proven: at });
      return id;
    },
    async session(tokenHash, now) {
      const session = sessions.get(hex(tokenHash));
      if (!session || !holds(session, now)) return null;
      const { id, person, only, open, begun, used, proven } = session;
      return { id, person: persons.get(person)!, belongings: belongingsOf(person).filter(({ ensemble }) => only === null || ensemble.id === only), only, open, begun, used, proven };
    },
    async lookInto(id, ensemble) {
      for (const session of sessions.values()) if (session.id === id && session.only === null) session.open = ensemble;
    },
    async touch(id, now, expires) {
      for (const session of sessions.values()) if (session.id === id) Object.assign(session, { used: now, expires });
    },
    async renew(id, tokenHash, proven) {
      for (const [token, session] of [...sessions]) {
        if (session.id !== id) continue;
        sessions.delete(token);
        sessions.set(hex(tokenHash), { ...session, proven: proven ?? session.proven });
      }
    },
    async sessions(person, now) {
      const mine = [...sessions.values()].filter((session) => session.person === person && holds(session, now));
      return mine.sort((a, b) => b.used.getTime() - a.used.getTime()).map(({ id, only, way, browser, device, begun, used }) => ({ id, only, way, browser, device, begun, used }));
    },
    async revoke(id) {
      for (const session of sessions.values()) if (session.id === id) session.revoked = true;
    },
    live: async (ids, now) => new Set([...sessions.values()].filter((session) => ids.includes(session.id) && holds(session, now)).map(({ id }) => id)),

    hand: async (person) => hands.get(person) ?? null,
    async setHand(person, hand) {
      if (hand) hands.set(person, hand);
      else hands.delete(person);
    },
  };
}
