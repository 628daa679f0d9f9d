import { setTimeout as wait } from 'node:timers/promises';
import { buildApp } from './app.ts';
import { createClosing } from './closing.ts';
import { DEMO_ENSEMBLE } from './demo/ensemble.ts';
import { fillDemo, type DemoAnswer } from './demo/fillDemo.ts';
import type { Deps } from './http/deps.ts';
import { createDraining } from './http/draining.ts';
import { importWork } from './http/layOnShelf.ts';
import { makeSignInLink } from './http/tokens.ts';
import { createHalls, type Hall } from './halls.ts';
import * as documents from './jobs/documents.ts';
import { lookThrough } from './jobs/lookThrough.ts';
import { allowAtOnce } from './jobs/runInWorker.ts';
import { createCounts } from './limits/counts.ts';
import { listen } from './listen.ts';
import { openStore } from './openStore.ts';
import { openPost } from './mail/post.ts';
import { startRounds } from './mail/round.ts';
import { openProvider } from './signIn/identityProvider.ts';
import { createNotices } from './operations/notices.ts';
import { startWorker } from './queue/worker.ts';
import { runProgram } from './program.ts';
import { hintsThrough } from './redis/hints.ts';
import { openRedis } from './redis/openRedis.ts';
import { readSettings, type Settings } from './settings.ts';
import type { Installation } from './store/installation.ts';
import { standardDaybook, type Daybook } from './watch/daybook.ts';
import { serveMeasures } from './watch/serveMeasures.ts';
import { watchServer } from './watch/watchServer.ts';
import { addresses, firstEnsemble, librarianLink } from './welcome.ts';

const LONGEST_STOP = 40_000;
/** How long work under way is waited for by a server that leaves. Chosen, not measured. */
const LONGEST_WORK = 12_000;
/** A section of sixteen behind one address is well below. Chosen, not measured. */
const REQUESTS_PER_MINUTE = 3000;

const say = (line: string) => console.log(line);
let daybook = standardDaybook(null);
const log: Daybook['log'] = (...said) => daybook.log(...said);
const closing = createClosing();
const draining = createDraining();

async function start(settings: Settings): Promise<void> {
  daybook = standardDaybook(settings.log);
  const redis = settings.redisUrl === null ? null : openRedis(settings.redisUrl, log);
  if (redis) closing.add(() => redis.close());
  const installation = await openStore(settings, closing, log);
  closing.check();
  const now = () => new Date();
  const { door, attempts, ping, queue } = installation;
  const notices = createNotices();
  const watch = watchServer({ daybook, installation, notices, redis });
  const hall = createHalls(installation, notices.logged, watch.authority);
  const post = settings.letters && openPost(settings.letters.url, settings.letters.from);
  const identity = settings.identity && openProvider(settings.identity);
  // A port of 0 is known once it is listened on; nobody is written to before.
  let at = settings.origin ?? '';
  const deps: Deps = { door, attempts, hall, ping, notices, queue, documents, lookThrough, now, origin: settings.origin, address: () => at, requestsPerMinute: REQUESTS_PER_MINUTE, letters: settings.letters, post, identity, log };
  const app = await buildApp(deps, { draining, redis, lacks: () => installation.lacks(), counts: createCounts(redis), proxies: settings.proxies, watch: watch.requests, counted: watch.sockets, ...(redis ? { adapter: hintsThrough(redis) } : {}) });
  closing.add(() => app.close());
  closing.add(() => draining.leave(app.server, LONGEST_WORK));
  closing.check();
  if (settings.metrics) {
    const numbers = await serveMeasures(watch.measures, settings.metrics);
    closing.add(() => numbers.close());
  }
  const port = await listen(app, settings.host, settings.port);
  if (settings.jobs) {
    allowAtOnce(settings.jobs);
    const worker = startWorker(deps, { atOnce: settings.jobs, event: daybook.event });
    closing.add(() => worker.drain(LONGEST_WORK));
  }
  closing.add(() => wait(settings.leaveSeconds * 1000));
  const [address, ...others] = addresses(settings, port);
  at = address!;
  if (settings.letters && post) closing.add(startRounds({ log, alone: (work) => installation.alone('letters', work), halls: async () => (await door.ensembles()).map(({ id }) => hall(id)), post, minutes: settings.letters.minutes, address: address! }));
  const links = await waysIn(installation, deps, settings, address!);
  closing.check();
  say(`Bowline is at ${address}`);
  for (const other of others) say(`In the house network: ${other}`);
  if (settings.host === '127.0.0.1' && !settings.origin) say('Only this computer can open it. For the house network: HOST=0.0.0.0 npm start');
  for (const { role, name, url } of links) say(`Sign in as ${role} ${name}: ${url}`);
  say(links.length ? 'Each link works once. Ctrl-C stops Bowline.' : 'Whoever has lost their way in gets a new link: npm run -s bowline -- link "Their Name" --ensemble "The Ensemble". Ctrl-C stops Bowline.');
}

/** The first ensemble, its librarian and with them the demo, made by one of several servers that start at once and found by the others. */
async function waysIn(installation: Installation, deps: Deps, settings: Settings, address: string): Promise<DemoAnswer['links']> {
  const links: DemoAnswer['links'] = [];
  async function open(): Promise<void> {
    const first = deps.hall((await firstEnsemble(deps.door)).id);
    if (settings.demo) links.push(...(await demo(deps, first, address)));
    if (links.some(({ role }) => role === 'librarian')) return;
    const librarian = await librarianLink(deps.door, first, address, deps.now(), settings.databaseUrl === null);
    if (librarian) links.push(librarian);
  }
  while (!(await installation.alone('opening', open))) await wait(100);
  return links;
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

runProgram({ name: 'Bowline', closing, log, start: () => start(readSettings(process.env, process.argv.slice(2))), leaving: () => draining.begin(), gone: () => {}, longestStop: LONGEST_STOP });
