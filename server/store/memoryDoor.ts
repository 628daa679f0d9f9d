import { randomUUID } from 'node:crypto';
import { createMemoryWays } from './memoryWays.ts';
import { HANDED_OUT, UNKNOWN, type Belonging, type Door } from './door.ts';
import { eraseInMemory } from './memoryErasure.ts';
import { takeUpInMemory } from './memoryTakeUp.ts';
import { rowOf } from './memoryTrail.ts';
import type { DoorNews } from './trail.ts';
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

  function tell(id: string, { kind, by, facts = {} }: DoorNews, only: string | null): void {
    const person = persons.get(id);
    if (!person) return;
    for (const ensemble of ensembles.values()) {
      if (ensemble.shelves.people.has(id) && (only === null || ensemble.id === only)) ensemble.shelves.trail.push(rowOf({ kind, about: person, facts }, by === undefined ? person : by));
    }
  }

  return {
    ...createMemoryWays(entry),

    person: async (id) => persons.get(id) ?? null,

    async addEnsemble(name) {
      if ([...ensembles.values()].some((one) => one.name === name)) return null;
      const { id } = ensembles.open(randomUUID(), name);
      return { id, name };
    },
    ensembles: async () => [...ensembles.values()].map(({ id, name }) => ({ id, name })),
    async nameEnsemble(id, name, by = null) {
      const ensemble = ensembles.get(id);
      if (!ensemble || [...ensembles.values()].some((one) => one.name === name && one.id !== id)) return false;
      ensemble.name = name;
      ensemble.shelves.trail.push(rowOf({ kind: 'ensembleNamed', facts: { name } }, by));
      return true;
    },
    async join(ensemble, person, standing) {
      ensembles.get(ensemble)!.shelves.people.set(person, { ...persons.get(person)!, ...standing });
    },

    belongings: async (person) => belongingsOf(person),

    belongingsOf: async (people) => new Map(people.map((person) => [person, belongingsOf(person)])),

    async addLink(person, tokenHash, expires, ensemble, more = HANDED_OUT) {
      links.set(hex(tokenHash), { ...more, id: randomUUID(), person, expires, used: false, ensemble });
    },
    async useLink(tokenHash, now) {
      const link = links.get(hex(tokenHash));
      if (!link || link.used || link.expires <= now) return null;
      link.used = true;
      return { person: persons.get(link.person)!, ensemble: link.ensemble, invitation: link.invitation, letter: link.letter };
    },

    takeUp: async (tokenHash, known, now) => takeUpInMemory(entry, hex(tokenHash), known, now),

    async openSession(person, tokenHash, expires, only, { at = new Date(), ...coming } = UNKNOWN) {
      const id = randomUUID();
      sessions.set(hex(tokenHash), { ...coming, id, person, expires, revoked: false, open: only, only, begun: at, used: at, proven: at });
      tell(person, { kind: 'signedIn', facts: { way: coming.way } }, only);
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
      for (const session of sessions.values()) {
        if (session.id !== id || session.revoked) continue;
        session.revoked = true;
        tell(session.person, { kind: 'sessionEnded' }, session.only);
      }
    },
    async shut(ensemble, person, now, ways = false) {
      for (const [hash, link] of links) if (link.person === person && link.ensemble === ensemble) links.delete(hash);
      const open = [...sessions.values()].filter((session) => session.person === person && (ways || session.only === ensemble) && holds(session, now));
      for (const session of open) session.revoked = true;
      return open.map(({ id }) => id);
    },
    live: async (ids, now) => new Set([...sessions.values()].filter((session) => ids.includes(session.id) && holds(session, now)).map(({ id }) => id)),

    tell: async (id, news, only = null) => tell(id, news, only),

    left: async (person) => [...ensembles.values()].filter(({ shelves }) => shelves.departures.has(person)).map(({ id, name }) => ({ id, name })),
    async kept(person) {
      const own = [...sessions.values()].filter((session) => session.person === person);
      const named = (ensemble: string | null) => (ensemble === null ? null : (ensembles.get(ensemble)?.name ?? null));
      return {
        since: new Date(0).toISOString(),
        sessions: own.map((session) => ({ began: new Date(0).toISOString(), ends: session.expires.toISOString(), ended: null, ensemble: named(session.open) })),
        links: [...links.values()].filter((link) => link.person === person).map(({ expires }) => ({ ends: expires.toISOString(), used: null })),
      };
    },
    erase: async (person, asker, comments) => eraseInMemory(entry, person, asker, comments),

    hand: async (person) => hands.get(person) ?? null,
    async setHand(person, hand) {
      if (hand) hands.set(person, hand);
      else hands.delete(person);
    },
  };
}
