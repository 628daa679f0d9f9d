import { setTimeout as pause } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import type { Scene } from './scene.ts';

/** How others were answered while an attack ran, as multiples of the same without it. */
export interface Beside {
  /** Median under attack over median in quiet; both in one run, in turns. */
  ratio: number;
  p95: number;
  quiet: number;
  turns: number;
  strikes: number;
}

/** Turns timed in a row, and how often quiet and attack take turns. Chosen, not measured. */
const LEAST = 8;
const ROUNDS = 4;
/** A busy machine spoils a round for one side now and then; more rounds even that out. */
const MOST_ROUNDS = 16;
export const SLOWEST = 2;
/** What is over at once is not sent more often than the library lets one person send: it would be refused for that alone. */
const BETWEEN = 110;

const at = (sorted: readonly number[], share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!;
const sortedUp = (times: readonly number[]): number[] => [...times].sort((a, b) => a - b);

/** Watches one person's answers while `during` runs, a few of them at least. */
export function createBystander({ port, bystander, part, other }: Scene) {
  const worker = new Worker(new URL('./bystander.mjs', import.meta.url), { workerData: { port, cookie: bystander.cookie, part, other } });
  return {
    async watch(during: (enough: Promise<void>) => Promise<void>): Promise<number[]> {
      let heardEnough!: () => void;
      const enough = new Promise<void>((resolve) => (heardEnough = resolve));
      const times = new Promise<number[]>((resolve, reject) => {
        const hear = (message: { enough?: true; times?: number[]; failed?: string }) => {
          if (message.enough) return heardEnough();
          worker.off('message', hear);
          if (message.times) resolve(message.times);
          else reject(new Error(`Somebody else was not answered: ${message.failed}`));
        };
        worker.on('message', hear);
      });
      times.catch(() => heardEnough());
      worker.postMessage({ least: LEAST });
      try {
        await during(enough);
      } finally {
        worker.postMessage('stop');
      }
      return times;
    },
    close: () => worker.terminate(),
  };
}
export type Bystander = ReturnType<typeof createBystander>;

/** Strikes once or more while the bystander takes a few turns, each of which must be answered. What it costs them is measured only where that is asked for. */
export const answeredBeside = async (bystander: Bystander, strike: () => Promise<void>): Promise<void> => void (await bystander.watch(strike));

/** Strikes again and again beside the bystander's turns; every strike says itself whether it was refused as it should be. */
export async function besideOthers(bystander: Bystander, strike: () => Promise<void>): Promise<Beside> {
  const [quiet, attacked]: [number[], number[]] = [[], []];
  let strikes = 0;
  const ratio = () => at(sortedUp(attacked), 0.5) / at(sortedUp(quiet), 0.5);
  for (let round = 0; round < ROUNDS || (round < MOST_ROUNDS && ratio() >= SLOWEST); round++) {
    quiet.push(...(await bystander.watch((enough) => enough)));
    attacked.push(
      ...(await bystander.watch(async (enough) => {
        let over = false;
        void enough.then(() => (over = true));
        do {
          await Promise.all([strike(), pause(BETWEEN)]);
          strikes += 1;
        } while (!over);
      })),
    );
  }
  return { ratio: ratio(), p95: at(sortedUp(attacked), 0.95) / at(sortedUp(quiet), 0.95), quiet: at(sortedUp(quiet), 0.5), turns: attacked.length, strikes };
}
