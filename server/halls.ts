import { createAuthority, type Authority, type OnLogged } from './operations/authority.ts';
import type { Installation } from './store/installation.ts';
import type { Store } from './store/store.ts';

/** What one ensemble has of its own. Whoever holds it reaches nothing of another. */
export interface Hall {
  ensemble: string;
  store: Store;
  authority: Authority;
}

/** Halls kept ready. Chosen, not measured. */
const KEPT = 60;

/** The halls of an installation, opened when they are asked for. `logged` hears of every batch of new rows, in order within a part. */
export function createHalls(installation: Installation, logged: OnLogged, watch: (authority: Authority, ensemble: string) => Authority = (authority) => authority): (ensemble: string) => Hall {
  const halls = new Map<string, Hall>();
  return (ensemble) => {
    const hall = halls.get(ensemble) ?? open(ensemble);
    // Set again, so that the map runs from the longest unused to the latest.
    halls.delete(ensemble);
    halls.set(ensemble, hall);
    for (const [id, old] of halls) {
      if (halls.size <= KEPT) break;
      if (old === hall || !old.authority.idle()) continue;
      halls.delete(id);
      void old.store.close();
    }
    return hall;
  };

  function open(ensemble: string): Hall {
    const store = installation.of(ensemble);
    return { ensemble, store, authority: watch(createAuthority(store, logged), ensemble) };
  }
}
