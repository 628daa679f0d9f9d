import { createClosing } from './closing.ts';
import { Unstartable } from './database/unstartable.ts';
import { createHalls } from './halls.ts';
import type { Deps } from './http/deps.ts';
import * as documents from './jobs/documents.ts';
import { lookThrough } from './jobs/lookThrough.ts';
import { allowAtOnce } from './jobs/runInWorker.ts';
import { openStore } from './openStore.ts';
import { createNotices } from './operations/notices.ts';
import { runProgram } from './program.ts';
import { startWorker } from './queue/worker.ts';
import { readSettings } from './settings.ts';
import { standardDaybook } from './watch/daybook.ts';

/** A job that takes longer when this process is told to go is given back. Chosen, not measured: below what process keepers allow. */
const PATIENCE_MS = 8_000;
const LONGEST_STOP_MS = 15_000;

let daybook = standardDaybook(null);
const log: Deps['log'] = (...said) => daybook.log(...said);
const closing = createClosing();

/** A process that takes long jobs out of the lines of a database that servers share. */
async function start(): Promise<void> {
  const settings = readSettings(process.env, process.argv.slice(2));
  daybook = standardDaybook(settings.log);
  if (settings.databaseUrl === null) throw new Unstartable('A worker shares its database with servers: set DATABASE_URL to the same address as theirs. A server that stands alone needs no worker.');
  const installation = await openStore(settings, closing, log);
  closing.check();
  const jobs = Math.max(1, settings.jobs);
  allowAtOnce(jobs);
  const { door, attempts, ping, queue } = installation;
  const notices = createNotices();
  const deps: Deps = { door, attempts, post: null, identity: null, address: () => settings.origin ?? '', hall: createHalls(installation, notices.logged), ping, notices, queue, documents, lookThrough, now: () => new Date(), origin: settings.origin, requestsPerMinute: 0, letters: null, log };
  const worker = startWorker(deps, { atOnce: jobs, event: daybook.event });
  closing.add(() => worker.drain(PATIENCE_MS));
  daybook.event('worker ready', { jobs });
}

runProgram({ name: 'A worker', closing, log, start, leaving: () => daybook.event('worker draining', {}), gone: () => daybook.event('worker gone', {}), longestStop: LONGEST_STOP_MS });
