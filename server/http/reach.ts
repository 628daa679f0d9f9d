import type { Hall } from '../halls.ts';
import type { Belonging, Known } from '../store/door.ts';
import type { Person } from '../store/people.ts';
import { programmesOpenTo } from '../store/programmeEnd.ts';
import type { Thing } from '../store/whereabouts.ts';
import type { Deps } from './deps.ts';
import { notFound, trouble } from './trouble.ts';

/** Somebody in one of their ensembles, and what they may open there. */
export interface Reach {
  person: Person;
  hall: Hall;
  /** Programmes that whoever only deputises may open; null: all of the ensemble's. */
  programmes: ReadonlySet<string> | null;
}

interface Comer {
  person: Known;
  belongings: readonly Belonging[];
  open: string | null;
}

/** One of a person's ensembles, as they are in it. */
async function within(deps: Pick<Deps, 'hall' | 'now'>, { id, name }: Known, { ensemble, librarian, deputy }: Belonging): Promise<Reach> {
  const hall = deps.hall(ensemble.id);
  const person = { id, name, librarian, deputy };
  return { person, hall, programmes: await programmesOpenTo(hall.store.people, person, deps.now()) };
}

/** The ensemble that lies open to somebody. */
export function openReach(deps: Pick<Deps, 'hall' | 'now'>, { person, belongings, open }: Comer): Promise<Reach> {
  const chosen = belongings.find(({ ensemble }) => ensemble.id === open) ?? belongings[0];
  if (!chosen) throw trouble(403, 'NO_ENSEMBLE', 'You do not belong to an ensemble here any more. Ask the librarian who let you in.');
  return within(deps, person, chosen);
}

/**
 * The ensemble among somebody's own that has the thing. What is in none of them, or in a programme that a deputy does not play in, is not there for them:
 * null.
 */
export async function reachOf(deps: Pick<Deps, 'hall' | 'now'>, { person, belongings }: Omit<Comer, 'open'>, thing: Thing): Promise<Reach | null> {
  for (const belonging of belongings) {
    const place = await deps.hall(belonging.ensemble.id).store.find(thing);
    if (!place) continue;
    const reach = await within(deps, person, belonging);
    return reach.programmes === null || (place.programme !== null && reach.programmes.has(place.programme)) ? reach : null;
  }
  return null;
}

const NAMES: Record<Thing['kind'], string> = { part: 'part', work: 'work', programme: 'programme', section: 'section', set: 'set of marks', erratum: 'wrong note', import: 'import' };
export const notThere = ({ kind }: Thing): Error => notFound(NAMES[kind]);
