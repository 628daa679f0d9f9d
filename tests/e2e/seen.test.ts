import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Me, Shelf } from '../../core/agreement/wire/http.ts';
import { APP, BOOTSTRAP, DATABASE, DOOR } from '../../server/database/connection.ts';
import { SOCKET_PORT } from '../../server/database/socketFolder.ts';
import { caller, signIn as signInByHttp, wholeLog } from '../server/history/library.ts';
import { openProxy, type Proxy } from '../server/history/proxy.ts';
import { startBrowser } from '../support/browser.ts';
import { until } from '../support/listener.ts';
import { freePort, startServer, type ServerProcess } from '../support/serverProcess.ts';
import { canLayDisks, laySmallDisk, type SmallDisk } from '../support/smallDisk.ts';
import { Player } from './player.ts';
import { signIn } from './reader.ts';

const PATIENT = { timeout: 240_000 };
const SMALL = canLayDisks();
/** A folder to put pictures of the sentences in, where wanted. */
const PICTURES = process.env.BOWLINE_SEEN_PICTURES;

let disk: SmallDisk | null = null;
let folder: string, env: Record<string, string>, server: ServerProcess, proxy: Proxy, browser: Browser, context: BrowserContext, page: Page, player: Player;
let part: string, me: Me, straight: string, origin: string;
let librarian: ReturnType<typeof caller>, cookie: string;
const faults: string[] = [];
let told = 0;

const log = () => wholeLog(straight, cookie, part);
const said = async (text: string) => (await log()).filter(({ input }) => (input as { text?: string }).text === text).length;
const sentence = (words: RegExp | string) => player.sentence().filter({ hasText: words }).waitFor();
const throughProxy = (link: string): string => link.replace(/^http:\/\/[^/]+/, origin);

/** Says something of the measure in hand, which shows at once and is on its way. */
async function say(): Promise<string> {
  const text = `Said ${(told += 1)}.`;
  await player.press('s');
  await player.write(/^Say something/, text);
  return text;
}

/** The sentence goes by itself, and what was written stands in the log once. */
async function written(text: string): Promise<void> {
  await sentence(/^.*Written: everything that waited is in the library\./);
  await page.waitForFunction(() => !/Written:|waits? in your pencil/.test(document.querySelector('[role=status]')?.textContent ?? ''));
  expect(await said(text)).toBe(1);
}

async function ask(sql: string, values: unknown[] = []): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ host: join(folder, 'data/socket'), port: SOCKET_PORT, user: BOOTSTRAP, database: DATABASE });
  await client.connect();
  try {
    return (await client.query<Record<string, unknown>>(sql, values)).rows;
  } finally {
    await client.end();
  }
}

async function picture(name: string, of = page): Promise<void> {
  if (!PICTURES) return;
  for (const [width, height] of [[1280, 800], [820, 1180]] as const) {
    await of.setViewportSize({ width, height });
    await of.screenshot({ path: join(PICTURES, `${name}-${width}.png`) });
  }
  await of.setViewportSize({ width: 1280, height: 800 });
}

async function open(link: string): Promise<Page> {
  const opened = await context.newPage();
  opened.setDefaultTimeout(60_000);
  opened.on('pageerror', (fault) => faults.push(fault.message));
  await signIn(opened, throughProxy(link));
  return opened;
}

beforeAll(async () => {
  disk = SMALL ? laySmallDisk(260) : null;
  folder = disk?.folder ?? mkdtempSync(join(tmpdir(), 'bowline-seen-'));
  const port = await freePort();
  straight = `http://127.0.0.1:${port}`;
  env = { PORT: String(port), HOST: '127.0.0.1', BOWLINE_DATA: join(folder, 'data') };
  [server, browser] = await Promise.all([startServer(env, ['--demo']), startBrowser()]);
  proxy = await openProxy(port);
  origin = `http://127.0.0.1:${proxy.port}`;
  cookie = (await signInByHttp(straight, server.link('librarian'))).cookie;
  librarian = caller(straight, cookie);
  const shelf = await librarian<Shelf>('GET', '/api/shelf');
  part = shelf.programmes.flatMap(({ works }) => works).find(({ title }) => title.startsWith('Low Water'))!.parts[0]!.id;
  context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  page = await open(server.link('principal'));
  player = new Player(page, origin);
  me = (await (await context.request.get(`${origin}/api/me`)).json()) as Me;
  await player.stand(part);
  await page.evaluate(() => void Object.assign(window, { sameSheet: 'the sheet that was opened first' }));
}, PATIENT.timeout);

afterAll(async () => {
  await browser?.close();
  await proxy?.close();
  server?.kill('SIGCONT');
  server?.kill('SIGTERM');
  await server?.ended;
  if (disk) disk.remove();
  else rmSync(folder, { recursive: true, force: true });
}, PATIENT.timeout);

describe('whoever writes sees what becomes of it', PATIENT, () => {
  it('nothing is said of a line that goes its way', async () => {
    const text = await say();
    await until(async () => (await said(text)) === 1);
    expect(await player.sentence().textContent()).not.toMatch(/library|pencil|written/i);
  });

  it('the server is killed: that it does not answer, how many wait, and when it is back that they are written', async () => {
    server.kill('SIGKILL');
    await server.ended;
    await sentence('No line to the library: it does not answer, or the network is away.');
    const text = await say();
    await sentence('One mark waits in your pencil. Mark on; it goes round when the line is back.');
    await say();
    await sentence('Two lines wait in your pencil.');
    await picture('killed');
    server = await startServer(env, ['--demo']);
    await written(text);
  });

  it('the server stands still and the line is half open: that it is not yet written, long before the line is given up', async () => {
    server.kill('SIGSTOP');
    const text = await say();
    await sentence('Not yet written: the library has not answered. One mark waits in your pencil.');
    server.kill('SIGCONT');
    await written(text);
  });

  it('answers are swallowed on the way and the line is cut: it is written once', async () => {
    proxy.swallow(6_000);
    const text = await say();
    await sentence('Not yet written');
    await written(text);
  });

  it('the device has no network', async () => {
    await context.setOffline(true);
    proxy.cutAll();
    await sentence('No line to the library: this device has no network.');
    const text = await say();
    await sentence('One mark waits in your pencil.');
    await context.setOffline(false);
    await written(text);
  });

  it('the database lets nobody in: that the library cannot reach its shelves', async () => {
    for (const role of [APP, DOOR]) await ask(`alter role ${role} connection limit 0`);
    await ask('select pg_terminate_backend(pid) from pg_stat_activity where usename = any($1)', [[APP, DOOR]]);
    const text = await say();
    await sentence('The library cannot reach its shelves just now. One mark waits in your pencil. Mark on; it is sent again by itself.');
    for (const role of [APP, DOOR]) await ask(`alter role ${role} connection limit -1`);
    await written(text);
  });

  it.skipIf(!SMALL)('the disk is full (root alone can try this): who can help, and that it goes on when there is room', async () => {
    disk!.fill();
    const fill = async (length: number): Promise<void> => {
      for (;;) {
        const body = { operation: crypto.randomUUID(), input: { id: crypto.randomUUID(), measure: 1, proposal: null, answers: null, text: Array.from({ length }, () => crypto.randomUUID()).join(' ') } };
        const reply = await context.request.post(`${straight}/api/parts/${part}/operations/comment`, { headers: { origin: straight }, data: body });
        if (reply.status() === 503) return;
        expect(reply.status()).toBeLessThan(300);
      }
    };
    // Down to what the page says: a short line finds room longest.
    for (const length of [40, 4, 1]) await fill(length);
    let text = await say();
    await until(async () => (await said(text).catch(() => 0)) === 1 || /disk is full/.test((await player.sentence().textContent()) ?? ''));
    while ((await said(text)) === 1) text = await say();
    await sentence('The library’s disk is full: nothing can be written just now.');
    await sentence('Tell whoever looks after Bowline.');
    await picture('full');
    disk!.makeRoom();
    await written(text);
  });

  it('signed out elsewhere: how to come in again, and then what waited goes round without loading the page', async () => {
    await ask('update session set revoked_at = now() where person_id = $1', [me.id]);
    const text = await say();
    await sentence(/You are signed out\./);
    await sentence('One mark waits in your pencil. Open a sign-in link in this browser; what waits goes round then.');
    await picture('signed-out');
    const { link } = await librarian<{ link: string }>('POST', `/api/people/${me.id}/link`);
    const other = await open(link);
    await other.close();
    await written(text);
  });

  it('their place in the ensemble is gone: whom to ask, and what they wrote is kept', async () => {
    const rows = await ask(`select 'belonging' as "table", to_jsonb(b) as row from belonging b where person_id = $1 union all select 'membership', to_jsonb(m) from membership m where person_id = $1`, [me.id]);
    await ask('delete from belonging where person_id = $1', [me.id]);
    proxy.cutAll();
    const text = await say();
    await sentence('This part is not open to you any more');
    await sentence('One mark waits in your pencil. Ask the librarian to let you in again; what waits is kept in this browser.');
    await picture('gone');
    for (const { table, row } of rows) await ask(`insert into ${String(table)} select * from jsonb_populate_record(null::${String(table)}, $1)`, [JSON.stringify(row)]);
    await written(text);
  });

  it('all this while the page was never loaded again, and nothing on it broke', async () => {
    expect(await page.evaluate(() => (window as unknown as { sameSheet?: string }).sameSheet)).toBe('the sheet that was opened first');
    expect(faults).toEqual([]);
  });

  it('a page of an older program is told to load again, and keeps what waits until then', async () => {
    const old = await context.newPage();
    await old.routeWebSocket(/\/socket\//, (near) => {
      const far = near.connectToServer();
      near.onMessage((message) => far.send(String(message).replace(/"protocol":\d+/, '"protocol":1')));
    });
    const reader = new Player(old, origin);
    await reader.stand(part);
    await reader.sentence().filter({ hasText: 'This page is older than the library.' }).waitFor();
    await reader.press('s');
    await reader.write(/^Say something/, 'From the old page.');
    await reader.sentence().filter({ hasText: 'One mark waits in your pencil. Load it again; your unsent marks are kept.' }).waitFor();
    await picture('old', old);
    await old.close();
    const fresh = await context.newPage();
    await new Player(fresh, origin).stand(part);
    await until(async () => (await said('From the old page.')) === 1);
    await fresh.close();
  });

  it('somebody else signs in in the same browser: nothing is sent in their name', async () => {
    const rows = (await log()).length;
    await signIn(await context.newPage(), throughProxy(server.link('player') || (await librarian<{ link: string }>('POST', `/api/people/${(await librarian<Shelf>('GET', '/api/shelf')).sections[0]!.seats[3]!.person!.id}/link`)).link));
    proxy.cutAll();
    await say();
    await sentence('Somebody else has signed in in this browser.');
    await sentence('One mark waits in your pencil. Load the page again; what you wrote is kept for you.');
    expect((await log()).length).toBe(rows);
  });
});
