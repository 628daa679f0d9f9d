import { type Kind, type News, ofEachKind, type Place, type Queue, TRIES } from '../queue/queue.ts';

interface Waiting extends Place {
  turn: number;
  came: number;
  tries: number;
  active: boolean;
}

/** The line in this process and gone with it. */
export function openMemoryQueue(): Queue {
  const places = new Map<string, Waiting>();
  const givenUp: Place[] = [];
  const listeners = new Set<(news: News) => void>();
  let count = 0;

  const hear = (news: News): void => listeners.forEach((listener) => listener(news));
  const lineOf = (kind: Kind): Waiting[] => [...places.values()].filter((place) => place.kind === kind);
  const waitingIn = (kind: Kind): Waiting[] => lineOf(kind).filter(({ active }) => !active).sort((a, b) => a.turn - b.turn || a.came - b.came);
  const placeOf = ({ job, kind, ensemble }: Place): Place => ({ job, kind, ensemble });

  return {
    async put(place) {
      const line = lineOf(place.kind);
      const own = line.filter(({ ensemble }) => ensemble === place.ensemble);
      const turn = line.length ? Math.max(Math.min(...line.map((one) => one.turn)), ...own.map((one) => one.turn + 1)) : 0;
      places.set(place.job, { ...placeOf(place), turn, came: count++, tries: 0, active: false });
    },
    async take(kind) {
      const next = waitingIn(kind)[0];
      if (!next) return null;
      next.active = true;
      next.tries += 1;
      return placeOf(next);
    },
    end: async ({ job }) => void places.delete(job),
    async giveBack({ job, kind }, how) {
      const place = places.get(job);
      if (!place?.active || how === 'lost') return;
      place.active = false;
      if (how === 'untried') place.tries -= 1;
      if (place.tries >= TRIES) {
        places.delete(job);
        givenUp.push(placeOf(place));
      }
      hear({ what: 'asked', kind });
    },
    async drop({ job }) {
      if (!places.get(job)?.active) places.delete(job);
    },
    ahead: async ({ job, kind }) => Math.max(0, waitingIn(kind).findIndex((place) => place.job === job)),
    waiting: async () => ofEachKind((kind) => waitingIn(kind).length),
    // Whoever works here is gone together with the line.
    takeBack: async () => {},
    takeGivenUp: async () => givenUp.shift() ?? null,
    tidy: async () => {},
    tell: hear,
    listen(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close: async () => listeners.clear(),
  };
}
