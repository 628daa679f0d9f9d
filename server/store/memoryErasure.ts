import type { AgreementEvent, LogEntry } from '../../core/agreement/event.ts';
import type { Mention } from '../../core/agreement/state.ts';
import { FORMER, type Erased } from './door.ts';
import { rowOf } from './memoryTrail.ts';
import type { Entry } from './shelves.ts';

type Said = { text: string; mentions?: Mention[] };

function saidWithout<S extends Said>(said: S, who: string, blank: boolean): S {
  if (blank) {
    const { mentions: _, ...rest } = said;
    return { ...(rest as S), text: '…' };
  }
  const named = said.mentions?.find(({ person }) => person === who);
  return named ? { ...said, text: said.text.replaceAll(`@${named.name}`, `@${FORMER}`), mentions: said.mentions!.map((one) => (one.person === who ? { ...one, name: FORMER } : one)) } : said;
}

function rowWithout(row: LogEntry, who: string, comments: boolean): LogEntry {
  const blank = comments && row.by === who;
  const events = row.events.map((event): AgreementEvent => (event.type === 'commented' ? saidWithout(event, who, blank) : event));
  return { ...row, byName: row.by === who ? FORMER : row.byName, events, input: row.name === 'comment' ? saidWithout(row.input as Said, who, blank) : row.input };
}

/** What `erase_person` does in the database. */
export function eraseInMemory({ persons, ensembles, links, sessions, hands }: Entry, who: string, asker: string, comments: boolean): Erased {
  const by = persons.get(asker) ?? null;
  const old = persons.get(who)!.name;
  const own = [...sessions].filter(([, session]) => session.person === who);
  const erased: Erased = { sessions: own.map(([, { id }]) => id), parts: [] };
  own.forEach(([hash]) => sessions.delete(hash));
  for (const [hash, link] of links) if (link.person === who) links.delete(hash);
  hands.delete(who);
  persons.set(who, { id: who, name: FORMER });
  for (const { id: ensemble, shelves } of ensembles.values()) {
    const here = shelves.people.has(who) || shelves.departures.has(who);
    const namesake = [...shelves.people.keys(), ...shelves.departures.keys()].some((id) => id !== who && persons.get(id)!.name === old);
    for (const part of shelves.parts.values()) {
      const log = part.log.map((row) => rowWithout(row, who, comments));
      if (JSON.stringify(log) === JSON.stringify(part.log)) continue;
      part.log.splice(0, part.log.length, ...log);
      part.snapshots = [];
      part.rewritten += 1;
      erased.parts.push({ ensemble, part: part.id });
    }
    for (const set of shelves.kept.values()) {
      set.parts.forEach((part) => (part.log = part.log.map((row) => rowWithout(row, who, comments))));
      if (here && !namesake && set.keptBy === old) set.keptBy = FORMER;
    }
    for (const erratum of shelves.errata.values()) if (here && !namesake && erratum.by === old) erratum.by = FORMER;
    if (here) shelves.trail.push(rowOf({ kind: 'erased', about: { id: who, name: FORMER } }, by?.id === who ? { id: who, name: FORMER } : by));
    for (const row of shelves.trail) for (const named of [row.by, row.about]) if (named?.id === who) named.name = FORMER;
    shelves.people.delete(who);
    shelves.departures.delete(who);
    shelves.letters.delete(who);
    shelves.attention.delete(who);
    shelves.memberships.splice(0, shelves.memberships.length, ...shelves.memberships.filter(({ person }) => person !== who));
    for (const seating of shelves.seatings.values()) seating.members = seating.members.filter(({ person }) => person !== who);
  }
  return erased;
}
