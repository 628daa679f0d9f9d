import { randomUUID } from 'node:crypto';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PartView, WorkView } from '../../core/agreement/wire/http.ts';
import { startBrowser } from '../support/browser.ts';
import { NAUGHTY } from '../support/naughty.ts';
import { openHouse, type House } from './house.ts';
import { Reader, signIn } from './reader.ts';

const PATIENT = { timeout: 400_000 };
/** Whatever of it ran would set this. */
const RUN = "window.ran=(window.ran||0)+1";
const LIVE = [`<script>${RUN}</script>`, `"><img src=x onerror="${RUN}">`, `<svg onload="${RUN}"><a href="javascript:${RUN}">x</a></svg>`, `</text><script>${RUN}</script>`, `]]><script>${RUN}</script>`, `<style>*{display:none}</style>`, `<iframe srcdoc="<script>parent.${RUN}</script>"></iframe>`];
const MARKUP = NAUGHTY.filter((text) => /[<>]/.test(text) && text.length <= 110);
const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

let house: House, browser: Browser, librarian: BrowserContext, page: Page, reader: Reader;
const faults: string[] = [];
const asked: string[] = [];

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  librarian = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  page = await librarian.newPage();
  page.setDefaultTimeout(120_000);
  page.on('pageerror', ({ message }) => faults.push(message));
  page.on('console', (line) => /Content Security Policy/.test(line.text()) && faults.push(line.text()));
  page.on('dialog', (dialog) => {
    faults.push(`dialog ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('request', (request) => asked.push(request.url()));
  await signIn(page, house.links.get('librarian')!);
  reader = new Reader(librarian, house.origin);
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

/** Nothing ran, nothing of the text became an element, nobody else was asked, and nothing runs past the edge. */
async function isOnlyText(): Promise<void> {
  const found = await page.evaluate(() => ({
    ran: (window as unknown as { ran?: number }).ran ?? 0,
    made: document.querySelectorAll('iframe, img[src="x"], #root script, #root style, a[href^="javascript:"], [onerror], [onload]').length,
    hidden: getComputedStyle(document.querySelector('main')!).display === 'none',
    past: document.querySelector('main')!.scrollWidth - document.querySelector('main')!.clientWidth,
  }));
  expect(found).toEqual({ ran: 0, made: 0, hidden: false, past: 0 });
  expect(faults).toEqual([]);
  expect(asked.filter((url) => !/^(data|blob):/.test(url) && new URL(url).origin !== house.origin)).toEqual([]);
}
const post = async <T>(path: string, data: unknown): Promise<T> => {
  const answer = await librarian.request.post(`${house.origin}/api${path}`, { data, headers: { origin: house.origin } });
  expect([path, answer.status()]).toEqual([path, 200]);
  return (await answer.json()) as T;
};

function hostileScore(): string {
  const text = escaped(LIVE.join(' '));
  const note = (step: string, more = '') => `<note><pitch><step>${step}</step><octave>5</octave></pitch><duration>1</duration><voice>1</voice><type>quarter</type>${more}</note>`;
  const words = LIVE.map((one) => `<direction><direction-type><words>${escaped(one)}</words></direction-type></direction>`).join('');
  return `<?xml version="1.0" encoding="UTF-8"?><score-partwise version="4.0"><work><work-title>${text}</work-title></work><identification><creator type="composer">${text}</creator><rights>${text}</rights></identification><credit page="1"><credit-words>${text}</credit-words></credit><part-list><score-part id="P1"><part-name>${text}</part-name><part-abbreviation>${text}</part-abbreviation><score-instrument id="I1"><instrument-name>Violin</instrument-name><instrument-sound>strings.violin</instrument-sound></score-instrument></score-part></part-list><part id="P1"><measure number="${escaped('1"><script>')}"><attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>${words}<direction><direction-type><rehearsal>${escaped(LIVE[0]!)}</rehearsal></direction-type></direction>${note('C', `<lyric><text>${escaped(LIVE[1]!)}</text></lyric>`)}${note('D', `<notations><technical><fingering>${escaped('<b>1</b>')}</fingering><other-technical>${escaped(LIVE[0]!)}</other-technical></technical></notations>`)}${note('E')}${note('F')}</measure></part></score-partwise>`;
}

describe('the sign-in link', PATIENT, () => {
  it('the link is out of the address and the history once it is used, and is passed on to nobody', async () => {
    const context = await browser.newContext();
    const fresh = await context.newPage();
    const referrers: (string | undefined)[] = [];
    fresh.on('request', (request) => referrers.push(request.headers().referer));
    const link = house.links.get('player')!;
    const token = new URL(link).searchParams.get('token')!;
    await signIn(fresh, link);
    await fresh.locator('main').waitFor();
    expect(fresh.url()).not.toContain(token);
    expect(await fresh.evaluate((secret) => [JSON.stringify(localStorage), JSON.stringify(sessionStorage), document.documentElement.outerHTML].filter((text) => text.includes(secret)).length, token)).toBe(0);
    // There is nothing to go back to: its place in the history was taken.
    await fresh.goBack();
    expect(fresh.url()).not.toContain(token);
    expect(referrers.filter((one) => one?.includes(token))).toEqual([]);
    expect(house.printed().split('\n').filter((line) => line.includes(token))).toHaveLength(1);
    await context.close();
  });
});

describe('hostile texts on the screens', PATIENT, () => {
  it('texts of an uploaded score run nothing and are shown as text', async () => {
    const { id: programme } = await post<{ id: string }>('/programmes', { title: 'Storm' });
    const answer = await librarian.request.post(`${house.origin}/api/programmes/${programme}/works`, { multipart: { file: { name: '<img src=x onerror=alert(1)>.musicxml', mimeType: 'application/xml', buffer: Buffer.from(hostileScore()) } }, headers: { origin: house.origin } });
    expect([answer.status(), await answer.text()]).toEqual([200, expect.anything()]);
    const { work } = (await answer.json()) as { work: WorkView };
    await page.goto(`${house.origin}/folder/${programme}`);
    await page.getByRole('table').waitFor();
    expect(await page.locator('main').innerText()).toContain(LIVE[0]);
    await isOnlyText();
    await page.goto(`${house.origin}/stand/${work.parts[0]!.id}`);
    await page.locator('[data-note]').first().waitFor();
    // The engraver's own drawing: the words are there, as text.
    await expect.poll(() => page.locator('svg.system').first().textContent()).toContain('onerror');
    await isOnlyText();
  });

  it('what people write runs nothing and is shown as text', async () => {
    const texts = [...LIVE, ...MARKUP];
    expect(texts.length).toBeGreaterThan(100);
    for (const title of [...LIVE, 'W'.repeat(120)]) await post('/programmes', { title: title.slice(0, 120), season: title.slice(0, 60), conductor: title.slice(0, 80), days: [{ kind: 'rehearsal', date: '2027-03-01', words: title.slice(0, 120) }] });
    for (const name of [...LIVE, 'W'.repeat(80)]) await post('/people', { name: name.slice(0, 80) });
    await page.goto(`${house.origin}/shelf`);
    await page.getByText(LIVE[0]!).first().waitFor();
    await isOnlyText();
    const { parts } = await reader.work('Low Water');
    const part = (await librarian.request.get(`${house.origin}/api/parts/${parts[0]!.id}`).then((answer) => answer.json())) as PartView;
    for (const text of texts) await post(`/parts/${part.id}/operations/comment`, { operation: randomUUID(), input: { id: randomUUID(), measure: 46, text } });
    for (const text of LIVE) await post(`/parts/${part.id}/errata`, { measure: 1, says: text, should: text });
    await page.goto(`${house.origin}/stand/${part.id}?m=46`);
    await page.locator('[data-note]').first().waitFor();
    await page.getByRole('status').filter({ hasText: 'Measure' }).waitFor();
    await page.keyboard.press('Enter');
    await page.getByText(LIVE[0]!).first().waitFor();
    const shown = (await page.locator('main').innerText()).replace(/\s+/g, ' ');
    expect(texts.filter((text) => !shown.includes(text.replace(/\s+/g, ' ').trim())).slice(0, 5)).toEqual([]);
    await isOnlyText();
  });
});
