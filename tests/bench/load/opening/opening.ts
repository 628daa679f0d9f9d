import { io } from 'socket.io-client';
import type { Browser } from 'playwright-core';
import type { PartView } from '../../../../core/agreement/wire/http.ts';
import { PROTOCOL } from '../../../../core/agreement/wire/socket.ts';
import { startBrowser } from '../../../support/browser.ts';
import { chance } from '../../../support/chance.ts';
import { longPart } from '../../../support/longPart.ts';
import { partXml } from '../../../support/partXml.ts';
import { freePort, startServer } from '../../../support/serverProcess.ts';
import { openWindow } from '../../page/window.ts';
import { furnishSection, layParts } from '../furnish.ts';
import { openInstallation } from '../installation.ts';
import { inTurns, median, ratio, say } from '../measured.ts';
import { fillLog } from './fill.ts';
import { importedPart } from './importedPart.ts';

const ROWS = [100, 10_000];
const MEASURES = 300;
const ROUNDS = Number(process.env.BOWLINE_RUNS ?? 5);
const SEED = 7;

/** From asking for a part until its view is read; then until what came since is there too. */
async function fetched(origin: string, cookie: string, part: string): Promise<{ view: number; bytes: number; follow: number }> {
  const began = performance.now();
  const reply = await fetch(`${origin}/api/parts/${part}`, { headers: { cookie } });
  const text = await reply.text();
  const { head } = JSON.parse(text) as PartView;
  const view = performance.now() - began;
  const socket = io(origin, { path: '/socket', transports: ['websocket'], forceNew: true, extraHeaders: { cookie } });
  await new Promise<void>((resolve) => socket.once('connect', () => resolve()));
  await socket.emitWithAck('hello', { protocol: PROTOCOL });
  const asked = performance.now();
  await socket.emitWithAck('follow', { part, after: head });
  const follow = performance.now() - asked;
  socket.disconnect();
  return { view, bytes: text.length, follow };
}

/** From the beginning of the navigation until the first mark that is inked in is painted. */
async function shown(browser: Browser, origin: string, cookie: string, part: string): Promise<number> {
  const [name, value] = cookie.split('=') as [string, string];
  const { page, close } = await openWindow(browser);
  try {
    await page.context().addCookies([{ name, value, url: origin }]);
    await page.addInitScript(() => {
      const look = () => {
        if (!document.querySelector('main.pages [data-mark][data-state="adopted"]')) return requestAnimationFrame(look);
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => Object.assign(globalThis, { shownAt: performance.now() });
        port2.postMessage(0);
      };
      requestAnimationFrame(look);
    });
    await page.goto(`${origin}/stand/${part}`, { waitUntil: 'commit' });
    await page.waitForFunction(() => 'shownAt' in globalThis, undefined, { timeout: 120_000, polling: 100 });
    return await page.evaluate(() => (globalThis as unknown as { shownAt: number }).shownAt);
  } finally {
    await close();
  }
}

/** A part in which ten thousand things were said beside one with a hundred, of the same music. */
export async function opening(): Promise<void> {
  const installation = await openInstallation();
  const browser = await startBrowser();
  try {
    const section = await furnishSection(installation.store, 'Opening', 16);
    const text = partXml(longPart(MEASURES, chance(SEED)), 'Opening');
    const music = importedPart(text);
    const parts: string[] = [];
    for (const rows of ROWS) {
      const [part] = await layParts(installation.store, section, [music], text);
      await fillLog(installation.store, section, part!, music, rows, SEED);
      parts.push(part!);
    }
    const { cookie } = section.players[1]!;
    const port = await freePort();
    const origin = `http://127.0.0.1:${port}`;
    const serve = () => startServer({ PORT: String(port), HOST: '127.0.0.1', DATABASE_URL: installation.address, BOWLINE_DATA: `${installation.folder}/own` });
    say(`opening a part of ${MEASURES} measures with ${ROWS[1]} rows in its log beside one with ${ROWS[0]}; seed ${SEED}, ${ROUNDS} rounds in turns`);
    const tell = (what: string, [few, many]: number[][], unit = 'ms') => say(`${what}: ${median(few!).toFixed(1)} and ${median(many!).toFixed(1)} ${unit}: ratio ${ratio(many!, few!).toFixed(2)}`);

    let server = await serve();
    const cold: number[][] = [[], []];
    for (let round = 0; round < 3; round += 1) {
      // Warm but for the parts: somebody else's question first.
      await fetch(`${origin}/api/me`, { headers: { cookie } });
      for (const which of round % 2 ? [1, 0] : [0, 1]) cold[which]!.push((await fetched(origin, cookie, parts[which]!)).view);
      server.kill('SIGTERM');
      await server.ended;
      server = await serve();
    }
    tell('GET of the part, first time since the server began (3 beginnings)', cold);
    for (const part of parts) await fetched(origin, cookie, part);
    const bytes: number[] = [];
    const follows: number[][] = [[], []];
    tell('GET of the part again', await inTurns(4 * ROUNDS, parts.map((part, which) => async () => {
      const came = await fetched(origin, cookie, part);
      bytes[which] = came.bytes;
      follows[which]!.push(came.follow);
      return came.view;
    })));
    say(`bytes of the part's view: ${bytes.map((count) => `${(count / 1000).toFixed(0)} kB`).join(' and ')}: ratio ${(bytes[1]! / bytes[0]!).toFixed(1)}`);
    tell('follow', follows);
    for (const part of parts) await shown(browser, origin, cookie, part);
    tell('in the page until the first inked mark is painted', await inTurns(ROUNDS, parts.map((part) => () => shown(browser, origin, cookie, part))));
    server.kill('SIGTERM');
    await server.ended;
  } finally {
    await browser.close();
    await installation.close();
  }
}
