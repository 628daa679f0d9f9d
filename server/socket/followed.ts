import type { Hall } from '../halls.ts';
import type { Deps } from '../http/deps.ts';
import { reachOf } from '../http/reach.ts';
import type { LiveSession } from '../store/door.ts';

/** Which hall a followed part is in. What an id names never changes, whether somebody may follow it does. */
export interface Followed {
  /** The hall of a part, for whoever may open it now; null for everybody else. */
  open(session: LiveSession, part: string): Promise<Hall | null>;
  /** The ensemble of a part that somebody followed; undefined where that was long ago. */
  ensembleOf(part: string): string | undefined;
  byHall(parts: readonly string[]): Map<Hall, string[]>;
}

/** Parts whose ensemble is remembered. Chosen, not measured. */
const KEPT = 5000;

export function createFollowed(deps: Pick<Deps, 'door' | 'hall' | 'now'>): Followed {
  const ensembles = new Map<string, string>();
  return {
    async open({ person, only }, part) {
      // Read anew: whoever has left an ensemble since connecting follows nothing more of it.
      const belongings = (await deps.door.belongings(person.id)).filter(({ ensemble }) => only === null || ensemble.id === only);
      const reach = await reachOf(deps, { person, belongings }, { kind: 'part', id: part });
      // Who belongs to one ensemble only is not looked for above; asked here, for who stands in a part's room hears every row of it, and the beat goes by what is kept here.
      if (!reach || !(await reach.hall.store.log.heads([part])).has(part)) return null;
      ensembles.delete(part);
      ensembles.set(part, reach.hall.ensemble);
      if (ensembles.size > KEPT) ensembles.delete(ensembles.keys().next().value!);
      return reach.hall;
    },
    ensembleOf: (part) => ensembles.get(part),
    byHall(parts) {
      const found = new Map<Hall, string[]>();
      for (const part of parts) {
        const ensemble = ensembles.get(part);
        if (ensemble === undefined) continue;
        const hall = deps.hall(ensemble);
        found.set(hall, [...(found.get(hall) ?? []), part]);
      }
      return found;
    },
  };
}
