import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { WorkView } from '../../../core/agreement/wire/http.ts';
import { isUnderWay, type ImportView } from '../../../core/agreement/wire/imports.ts';
import { unpack } from '../../../server/files/unpack.ts';
import { zipDirectory } from '../../../server/files/zipDirectory.ts';
import { type JobWorker, startWorker } from '../../../server/queue/worker.ts';
import { openPostgres } from '../../../server/store/postgres.ts';
import type { Installation } from '../../../server/store/installation.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { fakeDocuments } from '../../support/fakeDocuments.ts';
import { chance } from '../../support/chance.ts';
import { GOOD } from '../../support/hostileFiles.ts';
import { freePort, startServer, type ServerProcess } from '../../support/serverProcess.ts';
import { workHouse } from '../../support/workHouse.ts';
import { startWorkerProcess, type WorkerProcess } from '../../support/workerProcess.ts';
import { signIn } from '../history/library.ts';

const SCORE = GOOD.replaceAll('<part-name>', '<part-name>Violin ');
/** A worker is killed so often, so long after it has begun at most: a small score takes about as long. Chosen, not measured. */
const KILLS = 4;
const LONGEST_MS = 1_500;

/** Two servers that leave all long work to workers, on one database. */
let database: TestDatabase;
let url: string;
let servers: { address: string; server: ServerProcess }[];
let cookie: string;
let programme: string;
let installation: Installation;
const workers: WorkerProcess[] = [];

beforeAll(async () => {
  database = await createTestDatabase();
  url = database.address;
  servers = await Promise.all(
    ['A', 'B'].map(async () => {
      const port = await freePort();
      return { address: `http://127.0.0.1:${port}`, server: await startServer({ PORT: String(port), DATABASE_URL: url, BOWLINE_JOBS: '0' }) };
    }),
  );
  // Printed by the one that was first.
  cookie = (await signIn(servers[0]!.address, servers.map(({ server }) => server.link('librarian')).find(Boolean)!)).cookie;
  programme = (await ask<{ id: string }>(0, 'POST', '/api/programmes', JSON.stringify({ title: 'Harbour lights' }))).id;
  installation = openPostgres(database);
}, 60_000);
afterAll(async () => {
  for (const { server } of servers) server.kill('SIGTERM');
  await Promise.all(servers.map(({ server }) => server.ended));
  await installation.close();
  await database.drop();
}, 60_000);
afterEach(async () => {
  for (const worker of workers.splice(0)) {
    worker.kill('SIGKILL');
    await worker.ended;
  }
});

async function send(server: number, method: string, path: string, body?: string | FormData, headers: Record<string, string> = {}): Promise<Response> {
  const type = typeof body === 'string' ? { 'content-type': 'application/json' } : {};
  return fetch(`${servers[server]!.address}${path}`, { method, headers: { cookie, ...type, ...headers }, ...(body === undefined ? {} : { body }) });
}
const ask = async <T>(...asked: Parameters<typeof send>): Promise<T> => (await send(...asked)).json() as Promise<T>;

async function begin(fileName: string, content = 'Violin I:4'): Promise<string> {
  const form = new FormData();
  form.append('file', new Blob([content]), fileName);
  const reply = await send(0, 'POST', `/api/programmes/${programme}/works`, form, { prefer: 'respond-async' });
  expect(reply.status).toBe(202);
  return ((await reply.json()) as ImportView).id;
}
/** As the other server sees it. */
const seen = (id: string): Promise<ImportView> => ask<ImportView>(1, 'GET', `/api/imports/${id}`);
async function ended(id: string): Promise<ImportView> {
  let view: ImportView | undefined;
  await expect.poll(async () => isUnderWay((view = await seen(id))), { timeout: 30_000, interval: 50 }).toBe(false);
  return view!;
}
const onShelf = async (fileName: string): Promise<WorkView[]> =>
  (await ask<{ programmes: { works: WorkView[] }[] }>(0, 'GET', '/api/shelf')).programmes.flatMap(({ works }) => works).filter((work) => work.fileName === fileName);

async function launch(script?: string, ...flags: string[]): Promise<WorkerProcess> {
  const worker = await startWorkerProcess({ DATABASE_URL: url }, script, ...flags);
  workers.push(worker);
  return worker;
}
const dying = (moment: string): Promise<WorkerProcess> => launch('tests/server/queue/dying.ts', moment);

/** A worker in this process, which lives until the work is over. */
async function withWorker<T>(work: () => Promise<T>, documents = fakeDocuments): Promise<T> {
  const worker: JobWorker = startWorker(workHouse(installation, { documents }), { atOnce: 1 });
  try {
    return await work();
  } finally {
    await worker.drain(5000);
  }
}

describe('two servers and their workers on one database', () => {
  it('what is asked on one is seen on the other, done by a worker once, and told on both', async () => {
    const id = await begin('first.musicxml', SCORE);
    expect(await seen(id)).toMatchObject({ step: 'waiting' });
    const [one, two] = [await launch(), await launch()];
    expect(await ended(id)).toMatchObject({ step: 'done', trouble: null });
    expect(await onShelf('first.musicxml')).toHaveLength(1);
    const begun = [...one.lines, ...two.lines].map((line) => JSON.parse(line) as { msg: string; job?: string }).filter(({ msg, job }) => msg === 'job begun' && job === id);
    expect(begun).toHaveLength(1);
    one.kill('SIGTERM');
    expect(await one.ended).toBe(0);
    expect(one.lines.map((line) => (JSON.parse(line) as { msg: string }).msg)).toEqual(expect.arrayContaining(['worker ready', 'worker draining', 'worker gone']));
  });

  it.each(['taken', 'begun', 'reading', 'before it is kept', 'after it is kept', 'before it is said'])('a worker killed when it has come to "%s" leaves a job that another does, and nothing is laid twice', async (moment) => {
    const worker = await dying(moment);
    const fileName = `${moment}.musicxml`;
    const id = await begin(fileName);
    expect(await worker.ended).toBe('SIGKILL');
    const isKept = moment === 'after it is kept' || moment === 'before it is said';
    expect(await onShelf(fileName)).toHaveLength(isKept ? 1 : 0);
    await withWorker(async () => {
      expect(await ended(id)).toMatchObject({ step: 'done', trouble: null });
      await expect.poll(() => left(id), { timeout: 15_000 }).toBe('completed');
    });
    expect(await onShelf(fileName)).toHaveLength(1);
  });

  it('a job whose workers die three times is given up, says so, and the next is done', async () => {
    const id = await begin('poison.musicxml');
    for (let time = 0; time < 3; time++) expect(await (await dying('reading')).ended).toBe('SIGKILL');
    await withWorker(async () => {
      expect(await ended(id)).toMatchObject({ step: 'refused', trouble: { code: 'GIVEN_UP', text: expect.stringContaining('three times') } });
      expect(await ended(await begin('after.musicxml'))).toMatchObject({ step: 'done' });
    });
    expect(await onShelf('poison.musicxml')).toEqual([]);
  });

  it('stopped on one server while a worker is at it, it ends on both and leaves nothing', async () => {
    const worker = await dying('holds');
    const id = await begin('held.musicxml');
    await expect.poll(async () => (await seen(id)).files[0]!.step, { timeout: 20_000 }).toBe('reading');
    await send(1, 'DELETE', `/api/imports/${id}`);
    expect(await ended(id)).toMatchObject({ step: 'stopped', trouble: { code: 'STOPPED' } });
    await worker.says('job ended');
    expect(await onShelf('held.musicxml')).toEqual([]);
  });

  it('real workers killed at random instants lay every score once, or give it up and lay none', async () => {
    const seed = Number(process.env['BOWLINE_HISTORY_SEED'] ?? Math.floor(Math.random() * 1e9));
    console.log(`kills of workers: seed ${seed}`);
    const { next } = chance(seed);
    const names = Array.from({ length: 8 }, (_, n) => `random ${n}.musicxml`);
    const ids: string[] = [];
    for (const name of names) ids.push(await begin(name, SCORE));
    const isOver = async (): Promise<boolean> => !(await Promise.all(ids.map(seen))).some(isUnderWay);
    for (let kill = 0; kill < KILLS && !(await isOver()); kill++) {
      const worker = await launch();
      await worker.says('job begun');
      await wait(next() * LONGEST_MS);
      worker.kill('SIGKILL');
      await worker.ended;
    }
    await launch();
    for (const [n, id] of ids.entries()) {
      const { step, trouble } = await ended(id);
      const laid = (await onShelf(names[n]!)).length;
      expect({ step, code: trouble?.code ?? null, laid }).toEqual(step === 'done' ? { step, code: null, laid: 1 } : { step: 'refused', code: 'GIVEN_UP', laid: 0 });
    }
  });

  it('copies asked for on a server are made by workers, and those a dead one made are not made again', async () => {
    const { id: work, parts } = (await withWorker(async () => ended(await begin('copies.musicxml', 'Violin I:4,Violin II:4')))).answer!.work;
    const worker = await dying('one copy is made');
    const asked = send(0, 'POST', `/api/works/${work}/prints`, JSON.stringify({ copies: parts.map(({ id }) => ({ part: id, for: ['section'] })) }));
    expect(await worker.ended).toBe('SIGKILL');
    const printed: string[] = [];
    const documents = { ...fakeDocuments, printPart: (...order: Parameters<typeof fakeDocuments.printPart>) => (printed.push(order[0].heading.instrument), fakeDocuments.printPart(...order)) };
    await withWorker(async () => {
      const zip = Buffer.from(await (await asked).arrayBuffer());
      const entries = await zipDirectory(zip);
      expect(entries.map(({ name }) => name)).toEqual(['Harbour - Violin I.pdf', 'Harbour - Violin II.pdf']);
      expect(entries.map((entry) => (JSON.parse(unpack(zip, entry).toString('utf8')) as { heading: unknown }).heading)).toMatchObject([{ instrument: 'Violin I' }, { instrument: 'Violin II' }]);
      expect(printed).toEqual(['Violin II']);
      expect((await send(1, 'GET', `/api/parts/${parts[0]!.id}/print`)).status).toBe(200);
    }, documents);
  });
});

/** How a job stands in its line. */
async function left(id: string): Promise<string | undefined> {
  return (await database.rows<{ state: string }>('select state from bowline_queue.job where id = $1', [id]))[0]?.state;
}
