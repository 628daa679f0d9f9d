import type { KeptStorage } from './storage.ts';

/** `kept`: as it lay here last, because the library could not be asked. */
export interface Answer<T> {
  value: T;
  kept: boolean;
}

export interface Answers {
  /** Asks the library and keeps what it says; without a line, what it said last. Rejects with the library's refusal, and with `notKept` where there is neither. */
  ask<T>(path: string, fetchIt: () => Promise<T>): Promise<Answer<T>>;
  /** What was kept, without asking; undefined where nothing was. */
  recall<T>(path: string): Promise<T | undefined>;
  /** Changes what is kept under a path that is not asked for by itself. */
  note<T>(path: string, edit: (before: T | undefined) => T): Promise<void>;
  /** Forgets every path that `gone` is true of. */
  drop(gone: (path: string) => boolean): Promise<void>;
}

interface Options {
  storage: KeptStorage;
  /** Whose answers these are: another name after another person came or this one left. What was kept under an earlier name is not read again. */
  owner(): string;
  isAway(fault: unknown): boolean;
  notKept(): Error;
  wait(ms: number): Promise<void>;
  onAway(): void;
}

/** How long the library is waited for before what was kept is shown, in milliseconds. Chosen, not measured. */
const PATIENCE = 4_000;

/** Answers of the library, kept for when it cannot be asked. A browser that keeps nothing asks as before. */
export function answers({ storage, owner, isAway, notKept, wait, onAway }: Options): Answers {
  const keyOf = (whose: string, path: string) => `${whose} ${path}`;
  const recall = async <T>(path: string) => (await storage.read(keyOf(owner(), path)).catch(() => undefined)) as T | undefined;

  async function fromKept<T>(path: string): Promise<Answer<T> | null> {
    const value = await recall<T>(path);
    return value === undefined ? null : { value, kept: true };
  }

  return {
    recall,
    async ask<T>(path: string, fetchIt: () => Promise<T>): Promise<Answer<T>> {
      const whose = owner();
      const fresh = fetchIt().then(async (value): Promise<Answer<T>> => {
        await storage.change(keyOf(whose, path), () => value).catch(() => undefined);
        return { value, kept: false };
      });
      try {
        const answer = await Promise.race([fresh, wait(PATIENCE).then(async () => (await fromKept<T>(path)) ?? fresh)]);
        if (answer.kept) onAway();
        return answer;
      } catch (fault) {
        if (!isAway(fault)) throw fault;
        onAway();
        const kept = await fromKept<T>(path);
        if (!kept) throw notKept();
        return kept;
      }
    },
    note: (path, edit) => storage.change(keyOf(owner(), path), (before) => edit(before as never)).catch(() => undefined),
    async drop(gone) {
      const whose = `${owner()} `;
      const all = await storage.keys().catch(() => []);
      await storage.remove(all.filter((key) => !key.startsWith(whose) || gone(key.slice(whose.length)))).catch(() => undefined);
    },
  };
}
