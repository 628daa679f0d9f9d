import { setTimeout as wait } from 'node:timers/promises';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LogEntry } from '../../core/agreement/event.ts';
import { replay } from '../../core/agreement/replay.ts';
import type { PartView, Shelf } from '../../core/agreement/wire/http.ts';
import { nextAct } from '../server/history/acts.ts';
import { caller, signIn as signInByHttp, wholeLog } from '../server/history/library.ts';
import { Person } from '../server/history/person.ts';
import { startBrowser } from '../support/browser.ts';
import { chance } from '../support/chance.ts';
import { until } from '../support/listener.ts';
import { lacks } from '../support/topology/programs.ts';
import { startTopology, type Topology } from '../support/topology/startTopology.ts';
import { Player } from './player.ts';
import { signIn } from './reader.ts';

const SEED = Number(process.env.BOWLINE_HISTORY_SEED ?? 4640);
const PATIENT = { timeout: 600_000 };
/** Rows that must be acknowledged between two blows, so that there is something to lose. */
const BETWEEN = 25;

/** The topology of docker-compose.yml: three servers, Redis, PostgreSQL, the proxy on its very settings; people at work in a browser and beside it. */
describe.skipIf(lacks('redis-server', 'haproxy'))('a rolling restart while the section works', PATIENT, () => {
  let topology: Topology, browser: Browser, context: BrowserContext, page: Page, player: Player;
  let part: string, view: PartView, cookie: string;
  const people: Person[] = [];
  const faults: string[] = [];
  const loads: string[] = [];
  const written = new Set<string>();
  const acknowledged = new Map<string, number>();
  const refused = new Set<string>();
  const asked = { answered: 0, failed: [] as string[] };
  let working = true;
  let gentle = true;
  const work: Promise<unknown>[] = [];

  beforeAll(async () => {
    [topology, browser] = await Promise.all([startTopology({ servers: 3, redis: true, proxy: true, demo: true, env: { BOWLINE_LEAVE_SECONDS: '2', METRICS_PORT: '0' } }), startBrowser()]);
    const { address } = topology;
    const librarian = await signInByHttp(address, topology.link('librarian'));
    const call = caller(address, librarian.cookie);
    cookie = librarian.cookie;
    const shelf = await call<Shelf>('GET', '/api/shelf');
    part = shelf.programmes.flatMap(({ works }) => works).find(({ title }) => title.startsWith('Low Water'))!.parts[0]!.id;
    const section = shelf.sections[0]!;
    // The principal is at the browser; five of the others work beside it.
    for (const { person } of section.seats.slice(1, 6)) {
      const who = await signInByHttp(address, (await call<{ link: string }>('POST', `/api/people/${person!.id}/link`)).link);
      view = await caller(address, who.cookie)<PartView>('GET', `/api/parts/${part}`);
      people.push(new Person(who, address, [view]));
    }
    context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
    page = await context.newPage();
    page.setDefaultTimeout(60_000);
    page.on('pageerror', (fault) => faults.push(fault.message));
    await signIn(page, topology.link('principal'));
    player = new Player(page, address);
    await player.stand(part);
    page.on('load', () => loads.push(page.url()));
    await page.evaluate(() => void Object.assign(window, { sameSheet: 'the sheet that was opened first' }));
    people.forEach((person) => person.load());
    const luck = chance(SEED);
    const seats = view.section!.seats.map(({ seat }) => seat);
    work.push(...people.map(async (person) => {
      while (working) {
        write(person, seats, luck);
        await wait(60 + luck.below(120));
      }
    }), read());
  }, 600_000);

  afterAll(async () => {
    working = false;
    await Promise.all(work);
    people.forEach((person) => person.close());
    await browser?.close();
    await topology?.close();
  });

  function write({ open: [one] }: Person, seats: readonly string[], luck: ReturnType<typeof chance>): void {
    const { session } = one!;
    const { state, waiting } = session.getSnapshot();
    if (waiting.length > 20) return;
    const act = nextAct(state, view.part, seats, false, luck);
    const operation = session.submit(act.name, act.input as never);
    written.add(operation);
    void session.settled(operation).then((outcome) => (outcome.ok ? acknowledged.set(operation, outcome.seq) : refused.add(operation)));
  }

  /** Somebody who reads through the proxy all the while, and is not told to try again by anything. */
  async function read(): Promise<void> {
    while (working) {
      const reply = await fetch(`${topology.address}/api/parts/${part}`, { headers: { cookie }, signal: AbortSignal.timeout(20_000) }).then(async (answer) => ((await answer.arrayBuffer()), answer.status), (reason: Error) => reason.message);
      if (reply === 200) asked.answered += 1;
      else if (gentle) asked.failed.push(String(reply));
      await wait(50);
    }
  }
  const more = async (count = BETWEEN): Promise<void> => {
    const before = acknowledged.size;
    await until(() => acknowledged.size >= before + count);
  };
  const sayOnPage = async (text: string): Promise<void> => {
    await player.press('s');
    await player.write(/^Say something/, text);
  };
  const log = () => wholeLog(topology.address, cookie, part);
  const said = (rows: LogEntry[], text: string) => rows.filter(({ input }) => (input as { text?: string }).text === text).length;

  it('a browser is kept on one server while that one is there', async () => {
    const kept = await fetch(`${topology.address}/api/health`);
    const sticky = kept.headers.getSetCookie()[0]!.split(';')[0]!;
    const told = () => topology.servers.map(({ lines }) => lines.filter((line) => line.includes('"route":"/api/openapi.json"')).length);
    for (let n = 0; n < 9; n++) expect((await fetch(`${topology.address}/api/openapi.json`, { headers: { cookie: sticky } })).headers.getSetCookie()).toEqual([]);
    await until(() => told().reduce((sum, count) => sum + count, 0) === 9);
    expect(told().toSorted((a, b) => a - b)).toEqual([0, 0, 9]);
  });

  it('each server says that it is not ready, then ends in order, and everybody goes on by another', async () => {
    await more();
    for (const [index, server] of topology.servers.entries()) {
      const ending = server.stop();
      await until(async () => {
        const reply = await fetch(`${server.address}/api/ready`, { signal: AbortSignal.timeout(5000) }).catch(() => null);
        return reply?.status === 503 && ((await reply.json()) as { code: string }).code === 'LEAVING';
      });
      await sayOnPage(`While server ${index + 1} leaves.`);
      expect(await ending).toBe(0);
      expect(await fetch(`${server.address}/api/health`).catch(() => 'nobody there')).toBe('nobody there');
      await more();
      await server.start();
      await until(async () => (await fetch(`${server.address}/api/ready`)).ok);
      await more();
    }
    expect(asked.failed).toEqual([]);
    expect(asked.answered).toBeGreaterThan(50);
  });

  it('a server killed, Redis killed, the database killed: the section goes on', async () => {
    gentle = false;
    await topology.servers[1]!.kill();
    await sayOnPage('While server 2 lies there.');
    await more();
    await topology.servers[1]!.start();
    await topology.redis!.kill();
    await sayOnPage('While Redis is away.');
    await more();
    await topology.redis!.start();
    topology.database.kill();
    await sayOnPage('While the database comes back.');
    await more();
    await topology.servers[0]!.kill();
    await topology.servers[0]!.start();
    await more();
  });

  it('nothing that was written is lost, and everybody has the same', async () => {
    working = false;
    await Promise.all(work);
    await until(() => people.every((person) => person.quiet()));
    const rows = await log();
    expect(rows.map(({ seq }) => seq)).toEqual(rows.map((_, index) => index + 1));
    const logged = new Map(rows.map(({ operation, seq }) => [operation, seq]));
    expect(logged.size).toBe(rows.length);
    for (const [operation, seq] of acknowledged) expect(logged.get(operation)).toBe(seq);
    expect([...written].filter((operation) => !logged.has(operation) && !refused.has(operation))).toEqual([]);
    expect([...refused].filter((operation) => logged.has(operation))).toEqual([]);
    const state = replay(rows);
    for (const { open } of people) expect(open[0]!.session.getSnapshot().confirmed).toEqual(state);
    console.log(`rolling restart, seed ${SEED}: ${written.size} written, ${acknowledged.size} acknowledged, ${refused.size} refused, ${asked.answered} read through the proxy`);
  });

  it('the page was never loaded again, and what was said on it stands in the log once', async () => {
    for (const text of ['While server 1 leaves.', 'While server 2 leaves.', 'While server 3 leaves.', 'While server 2 lies there.', 'While Redis is away.', 'While the database comes back.']) {
      await until(async () => said(await log(), text) > 0);
      expect(said(await log(), text)).toBe(1);
    }
    expect(await page.evaluate(() => (window as unknown as { sameSheet?: string }).sameSheet)).toBe('the sheet that was opened first');
    expect(loads).toEqual([]);
    expect(faults).toEqual([]);
  });

  it('what came by other servers stands on the page', async () => {
    const last = (await log()).findLast(({ events }) => events.some((event) => event.type === 'proposed'))!;
    expect(last.byName).not.toBe('Ilse Tarnow');
    const seen = () => page.evaluate(() => document.querySelectorAll('main [data-state="proposed"]').length);
    expect(await seen()).toBeGreaterThan(0);
  });

  it('the servers’ daybooks hold no sign-in and no cookie', () => {
    const daybook = topology.servers.flatMap(({ lines }) => lines).filter((line) => line.startsWith('{')).join('\n');
    expect(daybook.split('\n').length).toBeGreaterThan(100);
    for (const secret of [cookie.split('=')[1]!, ...['librarian', 'principal', 'player'].map((role) => new URL(topology.link(role)).searchParams.get('token')!)]) expect(daybook).not.toContain(secret);
    expect(daybook).not.toMatch(/While server|It lies better/);
  });
});
