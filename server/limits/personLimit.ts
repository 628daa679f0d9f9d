import type { Counts } from './counts.ts';

/** Messages counted here before all servers hear of them together: a person may go over by so many on each server. */
const TOGETHER = 25;
const WINDOW = 60;
/** Persons whose counts are kept at hand. */
const KEPT = 5000;

interface Tally {
  open: number;
  /** Not listened to until then. */
  until: number;
}

/** How much one person may say a minute over all their connections, on whatever server; answered at once, counted together. */
export function createPersonLimit(counts: Counts, perMinute: number, now: () => number = () => performance.now()): (person: string) => boolean {
  const tallies = new Map<string, Tally>();

  function tallyOf(person: string): Tally {
    const tally = tallies.get(person) ?? { open: 0, until: 0 };
    tallies.delete(person);
    tallies.set(person, tally);
    for (const oldest of tallies.keys()) {
      if (tallies.size <= KEPT) break;
      tallies.delete(oldest);
    }
    return tally;
  }

  return (person) => {
    const tally = tallyOf(person);
    if (now() < tally.until) return false;
    tally.open += 1;
    if (tally.open >= TOGETHER) {
      counts.add(`person:${person}`, WINDOW, tally.open).then(
        ({ count, left }) => {
          if (count > perMinute) tally.until = now() + left;
        },
        () => {},
      );
      tally.open = 0;
    }
    return true;
  };
}
