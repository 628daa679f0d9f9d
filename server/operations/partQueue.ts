import { setTimeout as wait } from 'node:timers/promises';
import type { LogEntry } from '../../core/agreement/event.ts';
import { MOVED } from '../store/partLog.ts';
import type { Store } from '../store/store.ts';
import { catchUp, loadPart, type LoadedPart } from './loadedPart.ts';
import { rule, type Answer, type Asked, type RuledBatch } from './rule.ts';

/** Chosen, not measured: keeps one transaction well under a second. */
const LARGEST_BATCH = 200;
/** Other servers may write to the same part; each attempt after the first few waits a little, by chance, so that somebody gets through. */
const ATTEMPTS = 30;
const AT_ONCE = 3;
const LONGEST_WAIT = 20;

/** PostgreSQL's own word for a lock that was not to be had in time. */
const LOCKED = '55P03';

export interface PartQueue {
  /** null when there is no such part. Rejects when the store cannot be reached: nothing is known then, ask again with the same id. */
  submit(asked: Asked): Promise<Answer | null>;
  /** The part as it stands in the store now. */
  current(): Promise<LoadedPart | null>;
  readonly idle: boolean;
}

interface Waiting extends Asked {
  resolve(answer: Answer | null): void;
  reject(reason: unknown): void;
}

/** One writer a part: what arrives during a commit goes into the next one together. */
export function createPartQueue(store: Store, part: string, now: () => Date, logged: (entries: LogEntry[], ours: boolean) => void): PartQueue {
  let waiting: Waiting[] = [];
  let busy = false;
  let loaded: LoadedPart | null = null;

  async function work(): Promise<void> {
    busy = true;
    while (waiting.length) {
      const batch = waiting.slice(0, LARGEST_BATCH);
      waiting = waiting.slice(LARGEST_BATCH);
      try {
        const ruled = await commit(batch);
        batch.forEach((asked, index) => asked.resolve(ruled?.answers[index] ?? null));
      } catch (reason) {
        batch.forEach((asked) => asked.reject(reason));
      }
    }
    busy = false;
  }

  async function commit(batch: Waiting[]): Promise<RuledBatch | null> {
    for (let attempt = 1; ; attempt++) {
      const basis: LoadedPart | null = loaded ?? (loaded = await loadPart(store, part));
      if (!basis) return null;
      const ids = batch.map((asked) => asked.request.operation);
      const askers = [...new Map(batch.map(({ asker }) => [`${asker.person} ${asker.session}`, asker])).values()];
      try {
        const ruled = await store.log.commit(part, basis.place, askers, ids, (ground) => rule(part, batch, basis, ground, now().toISOString()));
        if (ruled === null) return null;
        if (ruled !== MOVED) {
          loaded = { ...basis, state: ruled.state, place: { ...basis.place, head: ruled.state.seq } };
          if (ruled.entries.length) logged(ruled.entries, true);
          return ruled;
        }
        await reload(basis);
      } catch (reason) {
        // Two parts were sent one id in the same moment: the second look finds whose it is.
        if ((reason as { code?: unknown }).code !== '23505') throw reason;
      }
      // Nothing is decided then; whoever wrote asks again with the same id.
      if (attempt === ATTEMPTS) throw Object.assign(new Error(`Part ${part} moved ${ATTEMPTS} times while one batch was ruled on.`), { code: LOCKED });
      if (attempt >= AT_ONCE) await wait(Math.random() * LONGEST_WAIT);
    }
  }

  /** Another process wrote, or our own commit went through and its answer was lost: either way followers must hear of the rows. */
  async function reload(basis: LoadedPart): Promise<void> {
    const caught = await catchUp(store, part, basis);
    loaded = caught?.part ?? null;
    if (caught?.rows.length) logged(caught.rows, false);
  }

  return {
    submit: (asked) =>
      new Promise((resolve, reject) => {
        waiting.push({ ...asked, resolve, reject });
        if (!busy) void work();
      }),
    async current() {
      const basis = loaded ?? (await loadPart(store, part));
      if (!basis) return null;
      const place = await store.log.place(part);
      if (!loaded && !busy) loaded = basis;
      if (!place || (place.head <= basis.place.head && place.rewritten === basis.place.rewritten)) return basis;
      return (await catchUp(store, part, basis))?.part ?? null;
    },
    get idle() {
      return !busy && waiting.length === 0;
    },
  };
}
