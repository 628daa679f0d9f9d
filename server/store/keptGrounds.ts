import { askerKey, type Asker, type Ground } from './partLog.ts';
import type { PlaceOfPart, Read } from './ground.ts';

/** Parts, and askers of one of them, whose ground is kept. Chosen, not measured. */
const PARTS = 500;
const ASKERS = 200;

export interface KeptGround extends Omit<Read, 'ground'> {
  place: PlaceOfPart;
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
      if (!known) return null;
      const told = askers.flatMap((asker): [string, string][] => (known.told.has(askerKey(asker)) ? [[askerKey(asker), known.told.get(askerKey(asker))!]] : []));
      return told.length === askers.length ? { ...known, told: new Map(told) } : null;
    },

    keep(part, place, { ground: { seats, actors }, ...read }) {
      const before = kept.get(part);
      const same = before && before.told.size < ASKERS && String(before.seats) === String(read.seats) && before.place.section === place.section && before.place.programme === place.programme && before.place.over === place.over;
      const told = new Map([...(same ? before.told : []), ...read.told]);
      const all = new Map([...(same ? before.ground.actors : []), ...actors]);
      // Set again, so that the map runs from the longest unread to the latest.
      kept.delete(part);
      kept.set(part, { place, seats: read.seats, told, ground: { seats, actors: all } });
      for (const old of kept.keys()) {
        if (kept.size <= PARTS) break;
        kept.delete(old);
      }
    },
  };
}
