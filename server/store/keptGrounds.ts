import { askerKey, type Asker, type Ground } from './partLog.ts';
import type { PlaceOfPart, Read } from './ground.ts';

/** Parts, and askers of one of them, whose ground is kept. Chosen, not measured. */
const PARTS = 500;
const ASKERS = 200;

export interface KeptGround {
  place: PlaceOfPart & { section: string };
  told: number;
  ground: Omit<Ground, 'known'>;
}

/** What the rules were last told of a part and its askers: a guess, to be confirmed under the lock before anything is written by it. */
export interface KeptGrounds {
  /** Null unless every one of them is known here. */
  of(part: string, askers: readonly Asker[]): KeptGround | null;
  keep(part: string, place: PlaceOfPart, read: Read): void;
}

export function keptGrounds(): KeptGrounds {
  const kept = new Map<string, KeptGround>();

  return {
    of(part, askers) {
      const known = kept.get(part);
      return known && askers.every((asker) => known.ground.actors.has(askerKey(asker))) ? known : null;
    },

    keep(part, place, { told, ground: { seats, actors } }) {
      const before = kept.get(part);
      // Set again, so that the map runs from the longest unread to the latest.
      kept.delete(part);
      const { section, over } = place;
      // What lies before no section has no number to hold by.
      if (section === null || told === null) return;
      const same = before && before.told === told && before.place.section === section && before.place.over === over && before.ground.actors.size < ASKERS;
      kept.set(part, { place: { ...place, section }, told, ground: { seats, actors: new Map([...(same ? before.ground.actors : []), ...actors]) } });
      for (const old of kept.keys()) {
        if (kept.size <= PARTS) break;
        kept.delete(old);
      }
    },
  };
}
