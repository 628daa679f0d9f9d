import type { EnsembleName, NotTakenUp } from './door.ts';
import type { Entry } from './shelves.ts';

/** See `takeUp` of the door. */
export function takeUpInMemory({ links, sessions, persons, ensembles }: Entry, hash: string, known: string, now: Date): EnsembleName | NotTakenUp {
  const link = links.get(hash);
  const ensemble = link?.ensemble ? ensembles.get(link.ensemble) : undefined;
  if (!link || !ensemble || !link.invitation || link.used || link.expires <= now) return 'over';
  const { shelves, id, name } = ensemble;
  const { person } = link;
  const invited = shelves.people.get(person);
  if (!invited) return 'over';
  if ([...sessions.values()].some((session) => session.person === person)) return 'cameIn';
  if (shelves.people.has(known)) return 'hereAlready';
  shelves.people.delete(person);
  shelves.people.set(known, { ...invited, ...persons.get(known)! });
  shelves.departures.delete(known);
  for (const { members } of [{ members: shelves.memberships }, ...shelves.seatings.values()]) {
    for (const member of members) if (member.person === person) member.person = known;
  }
  persons.delete(person);
  for (const [one, { person: whose }] of [...links]) if (whose === person) links.delete(one);
  return { id, name };
}
