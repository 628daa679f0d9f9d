import { setTimeout as wait } from 'node:timers/promises';
import { isUnderWay, type ImportView } from '../../../../core/agreement/wire/imports.ts';
import { demoScore } from '../../../../server/demo/score/writeScore.ts';
import { caller } from '../library.ts';
import { steady, type Note } from '../record/record.ts';
import type { House } from './furnish.ts';
import type { Shelves } from './shelves.ts';

const PAUSE = 12_000;
const PATIENCE = 90_000;

/** Scores handed in for workers to lay, each into a programme of its own, so that what is there at the end is the effect of that one. */
export interface LongJobs {
  handIn(until: number): Promise<void>;
  /** Waits for those under way and notes what each came to. */
  settle(shelves: Shelves, note: Note): Promise<void>;
}

export function longJobs(houses: readonly House[], address: () => string): LongJobs {
  const taken: { id: string; programme: string; cookie: string }[] = [];

  async function one(cookie: string): Promise<void> {
    const { id: programme } = await caller(address, cookie)<{ id: string }>('POST', '/api/programmes', { title: 'Handed in' });
    const form = new FormData();
    form.set('file', new Blob([demoScore()]), 'handed in.musicxml');
    // Asked once: where the answer is lost nobody knows whether it was taken in, and nothing was promised.
    const reply = await fetch(`${address()}/api/programmes/${programme}/works`, { method: 'POST', headers: { cookie, prefer: 'respond-async' }, body: form, signal: AbortSignal.timeout(15_000) }).catch(() => null);
    const view = reply?.status === 202 ? ((await reply.json().catch(() => null)) as ImportView | null) : null;
    if (view) taken.push({ id: view.id, programme, cookie });
  }

  return {
    async handIn(until) {
      for (let n = 0; steady() < until; n++) {
        await one(houses[n % houses.length]!.librarian.cookie);
        await wait(Math.min(PAUSE, Math.max(0, until - steady())));
      }
    },
    async settle(shelves, note) {
      const end = steady() + PATIENCE;
      for (const { id, programme, cookie } of taken) {
        const look = () => caller(address, cookie)<ImportView>('GET', `/api/imports/${id}`);
        let view = await look();
        while (isUnderWay(view) && steady() < end) {
          await wait(500);
          view = await look();
        }
        note({ k: 'job', id, effects: await shelves.worksIn(programme), told: view.step });
      }
    },
  };
}
