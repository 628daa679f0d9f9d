import { buildApp } from './app.ts';
import { createClosing, StoppedWhileStarting } from './closing.ts';
import { Unstartable } from './database/unstartable.ts';
import { DEMO_ENSEMBLE } from './demo/ensemble.ts';
import { fillDemo, type DemoAnswer } from './demo/fillDemo.ts';
import type { Deps } from './http/deps.ts';
import { importWork } from './http/layOnShelf.ts';
import { makeSignInLink } from './http/tokens.ts';
import { createHalls, type Hall } from './halls.ts';
import * as documents from './jobs/documents.ts';
import { lookThrough } from './jobs/lookThrough.ts';
import { allowAtOnce } from './jobs/runInWorker.ts';
import { listen } from './listen.ts';
import { openStore } from './openStore.ts';
import { openPost } from './mail/post.ts';
import { startRounds } from './mail/round.ts';
import { createNotices } from './operations/notices.ts';
import { startWorker } from './queue/worker.ts';
import { readSettings, type Settings } from './settings.ts';
import { addresses, firstEnsemble, librarianLink } from './welcome.ts';

const LONGEST_STOP = 15_000;
/** A section of sixteen behind one address is well below. Chosen, not measured. */
const REQUESTS_PER_MINUTE = 3000;

const say = (line: string) => console.log(line);
const log = (line: string, context?: unknown) => console.error(`${new Date().toISOString()} ${line}`, ...(context === undefined ? [] : [context]));
const closing = createClosing();

async function start(settings: Settings): Promise<void> {
  const installation = await openStore(settings, closing, log);
  closing.check();
  const now = () => new Date();
  const { door, ping, queue } = installation;
  const notices = createNotices();
  const hall = createHalls(installation, notices.logged);
  const deps: Deps = { door, hall, ping, notices, queue, documents, lookThrough, now, origin: settings.origin, requestsPerMinute: REQUESTS_PER_MINUTE, letters: settings.letters, log };
  const app = await buildApp(deps);
  closing.add(() => app.close());
  closing.check();
  if (settings.jobs) {
    allowAtOnce(settings.jobs);
    const worker = startWorker(deps, { atOnce: settings.jobs });
    closing.add(() => worker.drain(LONGEST_STOP / 2));
  }
  const port = await listen(app, settings.host, settings.port);
  const [address, ...others] = addresses(settings, port);
  if (settings.letters) closing.add(startRounds({ log, halls: async () => (await door.ensembles()).map(({ id }) => hall(id)), post: openPost(settings.letters.url, settings.letters.from), minutes: settings.letters.minutes, address: address! }));
  const first = hall((await firstEnsemble(door)).id);
  const links = settings.demo ? await demo(deps, first, address!) : [];
  closing.check();
  if (!links.some(({ role }) => role === 'librarian')) links.push(await librarianLink(door, first, address!, now()));
  say(`Bowline is at ${address}`);
  for (const other of others) say(`In the house network: ${other}`);
  if (settings.host === '127.0.0.1' && !settings.origin) say('Only this computer can open it. For the house network: HOST=0.0.0.0 npm start');
  for (const { role, name, url } of links) say(`Sign in as ${role} ${name}: ${url}`);
  say('Each link works once. Ctrl-C stops Bowline.');
}

async function demo(deps: Deps, { ensemble, store, authority }: Hall, address: string): Promise<DemoAnswer['links']> {
  const { filled, links } = await fillDemo({
    store,
    authority,
    signInLink: (person) => makeSignInLink(deps.door, address, person.id, ensemble, deps.now()),
    async layScore(programme, file, by) {
      const laid = await importWork({ store, documents: deps.documents }, programme, [{ ...file, by: by.id, at: deps.now() }]);
      if (!laid.ok) throw new Error(`The demo's score was not taken: ${JSON.stringify(laid)}`);
      return laid.answer.work;
    },
  });
  if (filled) await deps.door.nameEnsemble(ensemble, DEMO_ENSEMBLE);
  if (!filled) say('There is something on the shelf already, so the demo was not put there again.');
  return links;
}

/** Stops what was started, also when the start was still under way. Asked again meanwhile (a terminal and npm both pass Ctrl-C on), it goes on stopping. */
async function stop(started: Promise<void>): Promise<void> {
  setTimeout(() => process.exit(1), LONGEST_STOP).unref();
  closing.ask();
  await started;
  try {
    await closing.close();
  } catch (reason) {
    log('Bowline did not stop in order.', reason);
    process.exitCode = 1;
  }
  process.exit();
}

let stopping: Promise<void> | undefined;
const started: Promise<void> = Promise.resolve()
  .then(() => start(readSettings(process.env, process.argv.slice(2))))
  .catch((reason: unknown) => {
    if (reason instanceof StoppedWhileStarting) return;
    if (reason instanceof Unstartable) console.error(reason.message);
    else log('Bowline did not start.', reason);
    process.exitCode = 1;
    stopping ??= stop(Promise.resolve());
  });
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => (stopping ??= stop(started)));
