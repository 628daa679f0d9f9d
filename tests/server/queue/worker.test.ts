import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Deps } from '../../../server/http/deps.ts';
import * as documents from '../../../server/jobs/documents.ts';
import type { Handler } from '../../../server/queue/handler.ts';
import type { Kind } from '../../../server/queue/queue.ts';
import { type JobWorker, startWorker } from '../../../server/queue/worker.ts';
import type { Job, NewJob } from '../../../server/store/jobs.ts';
import { fakeDocuments } from '../../support/fakeDocuments.ts';
import { inMemory, type OneEnsemble } from '../../support/oneEnsemble.ts';
import { workHouse } from '../../support/workHouse.ts';

let store: OneEnsemble;
let other: string;
let workers: JobWorker[];
beforeEach(async () => {
  store = await inMemory();
  other = (await store.door.addEnsemble('Lighthouse Strings'))!.id;
  workers = [];
});
afterEach(() => Promise.all(workers.map((worker) => worker.drain(0))));

const done: Handler = async () => ({ state: 'done', outcome: null });
const never: Handler = ({ signal }) => new Promise((_, reject) => signal.addEventListener('abort', () => reject(signal.reason as Error)));

function start(handlers: Partial<Record<Kind, Handler>>, more: Partial<Deps> = {}): { worker: JobWorker; events: string[] } {
  const events: string[] = [];
  const event = (name: string, about: object): void => void events.push(`${name} ${(about as { job?: string }).job ?? ''}`.trim());
  const worker = startWorker(workHouse(store.installation, more), { atOnce: 1, handlers: { import: done, print: done, check: done, ...handlers }, event });
  workers.push(worker);
  return { worker, events };
}
const asked = (kind: Kind, more: Partial<NewJob> = {}): NewJob => ({ kind, target: 'here', order: null, progress: null, by: 'Lena', alone: null, uploads: [], at: new Date(), ...more });
const add = async (kind: Kind, ensemble = store.ensemble): Promise<Job> => (await store.installation.of(ensemble).jobs.add(asked(kind)))!;
const stateOf = async ({ id }: Job, ensemble = store.ensemble) => (await store.installation.of(ensemble).jobs.job(id))?.state;
const becomes = (job: Job, state: string, ensemble = store.ensemble) => expect.poll(() => stateOf(job, ensemble), { timeout: 10_000 }).toBe(state);

describe('a worker', () => {
  it('does what waits and what comes, each for its own ensemble', async () => {
    const seen: string[] = [];
    const early = await add('check');
    start({ check: async ({ hall, job }) => (seen.push(`${hall.ensemble} ${job.id}`), { state: 'done', outcome: 'found' }) });
    await becomes(early, 'done');
    const late = await add('check', other);
    await becomes(late, 'done', other);
    expect(seen).toEqual([`${store.ensemble} ${early.id}`, `${other} ${late.id}`]);
    expect(await stateOf(late)).toBeUndefined();
  });

  it('an ensemble that imports a season keeps no other waiting', async () => {
    const season = [];
    for (let n = 0; n < 12; n++) season.push(await add('import'));
    const [print, score] = [await add('print', other), await add('import', other)];
    const order: string[] = [];
    start({ import: async ({ job }) => (order.push(job.id), { state: 'done', outcome: null }), print: async ({ job }) => (order.push(job.id), { state: 'done', outcome: null }) });
    for (const job of season) await becomes(job, 'done');
    expect(order.indexOf(score.id)).toBeLessThan(3);
    expect(order.indexOf(print.id)).toBeLessThan(4);
  });

  it('is told when a job in its hands is stopped', async () => {
    const job = await add('import');
    const { events } = start({ import: never });
    await becomes(job, 'running');
    await store.jobs.stop(job.id);
    await becomes(job, 'stopped');
    await expect.poll(() => events, { timeout: 10_000 }).toContain(`job ended ${job.id}`);
  });

  it('that drains ends what is short, and gives back what is long as if it had not been begun', async () => {
    let end = (): void => {};
    const [short, long] = [await add('print'), await add('import')];
    const first = start({ import: never, print: () => new Promise((resolve) => (end = () => resolve({ state: 'done', outcome: null }))) });
    await becomes(short, 'running');
    await becomes(long, 'running');
    const gone = first.worker.drain(50);
    end();
    await gone;
    expect(await stateOf(short)).toBe('done');
    expect(first.events).toContain(`job given back ${long.id}`);
    const late = await add('check');
    start({});
    await becomes(long, 'done');
    await becomes(late, 'done');
    expect(first.events).not.toContain(`job begun ${late.id}`);
  });

  it('that cannot reach the database gives a job back, three times at most', async () => {
    const job = await add('check');
    const { events } = start({ check: () => Promise.reject(Object.assign(new Error('away'), { code: 'ECONNREFUSED' })) });
    await becomes(job, 'refused');
    expect(events.filter((event) => event === `job begun ${job.id}`)).toHaveLength(3);
    expect((await store.jobs.job(job.id))!.outcome).toMatchObject({ trouble: { code: 'GIVEN_UP' } });
  });

  it('tells a fault of ours once, under a name, and goes on', async () => {
    const lines: string[] = [];
    const job = await add('check');
    start({ check: () => Promise.reject(new Error('a bug')) }, { log: (line) => void lines.push(line) });
    await becomes(job, 'refused');
    const { trouble } = (await store.jobs.job(job.id))!.outcome as { trouble: { code: string; incident: string } };
    expect(trouble.code).toBe('FAULT');
    expect(lines).toEqual([`Fault "${trouble.incident}" in check ${job.id}`]);
    await becomes(await add('print'), 'done');
  });

  it('writes how far a job is at the end as it was told last', async () => {
    const job = await add('check');
    start({
      check: async ({ report }) => {
        for (let step = 0; step <= 100; step++) report({ step });
        return { state: 'done', outcome: null };
      },
    });
    await becomes(job, 'done');
    expect((await store.jobs.job(job.id))!.progress).toEqual({ step: 100 });
  });

  it('outlives a score that uses up the room of the thread that reads it', async () => {
    const small = { ...fakeDocuments, importScore: (...[bytes, fileName, options]: Parameters<typeof documents.importScore>) => documents.importScore(bytes, fileName, fileName === 'poison.xml' ? { ...options, heapMegabytes: 4 } : options) };
    workers.push(startWorker(workHouse(store.installation, { documents: small }), { atOnce: 1 }));
    const came = async function* () {
      yield Buffer.from('<score-partwise/>');
    };
    const codes = [];
    for (const name of ['poison.xml', 'other.xml']) {
      const job = (await store.jobs.add(asked('import', { order: { kind: 'work', by: 'Lena' }, uploads: [await store.jobs.keepUpload(name, came())] })))!;
      await becomes(job, 'refused');
      codes.push(((await store.jobs.job(job.id))!.outcome as { trouble: { code: string } }).trouble.code);
    }
    expect(codes).toEqual(['TOO_BIG', 'NO_STRING_PARTS']);
  });
});
