/** A worker that kills itself (kill -9) at a named moment of its first job: `node --import tsx tests/server/queue/dying.ts <moment>`. "holds" instead stands still while it reads. */
import { APP, DOOR } from '../../../server/database/connection.ts';
import { startWorker } from '../../../server/queue/worker.ts';
import { openPostgres } from '../../../server/store/postgres.ts';
import { fakeDocuments } from '../../support/fakeDocuments.ts';
import { workHouse } from '../../support/workHouse.ts';

const moment = process.argv[2];
const die = (): Promise<never> => {
  process.kill(process.pid, 'SIGKILL');
  return new Promise(() => {});
};
const at = async (name: string): Promise<void> => (moment === name ? die() : undefined);

const acting = (role: string) => ({ connectionString: process.env['DATABASE_URL']!, options: `-c role=${role}` });
const installation = openPostgres({ app: acting(APP), door: acting(DOOR) });
const { of, queue } = installation;
const { end } = queue;
installation.of = (ensemble) => {
  const store = of(ensemble);
  const { begin, keepMade } = store.jobs;
  const { addWork } = store.library;
  store.jobs.begin = async (...asked) => {
    await at('taken');
    const job = await begin(...asked);
    await at('begun');
    return job;
  };
  store.library.addWork = async (...asked) => {
    await at('before it is kept');
    const work = await addWork(...asked);
    await at('after it is kept');
    return work;
  };
  store.jobs.keepMade = async (...asked) => {
    const kept = await keepMade(...asked);
    await at('one copy is made');
    return kept;
  };
  return store;
};
queue.end = async (place) => {
  await at('before it is said');
  await end(place);
};
const documents: typeof fakeDocuments = {
  ...fakeDocuments,
  async importScore(bytes, fileName, options) {
    options?.onReached?.(1);
    await at('reading');
    if (moment === 'holds') await new Promise((_, reject) => options?.signal?.addEventListener('abort', () => reject(options.signal!.reason as Error)));
    return fakeDocuments.importScore(bytes, fileName);
  },
};
const log = (line: string): void => console.log(line);
startWorker(workHouse(installation, { documents, log }), { atOnce: 1, event: log });
log('worker ready');
