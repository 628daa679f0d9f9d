import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Part } from '../../core/music/part.ts';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { openHouse, type House } from './house.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const SIZES = { principal: { width: 1440, height: 900 }, player: { width: 1024, height: 1366 } };
const PICTURES = process.env.BOWLINE_PICTURES ?? mkdtempSync(join(tmpdir(), 'bowline-pictures-'));
const PATIENT = { timeout: 240_000 };

let house: House, browser: Browser, reader: Reader, part: string, music: Part;
const pages = {} as Record<keyof typeof SIZES, Page>;
const at = {} as Record<keyof typeof SIZES, Player>;
const faults: string[] = [];

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  for (const role of ['principal', 'player'] as const) {
    const context = await browser.newContext({ viewport: SIZES[role], hasTouch: role === 'player' });
    const page = (pages[role] = await context.newPage());
    page.setDefaultTimeout(60_000);
    page.on('pageerror', (fault) => faults.push(`${role}: ${fault.message}`));
    await signIn(page, house.links.get(role)!);
    if (role === 'principal') reader = new Reader(context, house.origin);
    at[role] = new Player(page, house.origin);
  }
  part = (await reader.work('Low Water')).parts[0]!.id;
  music = (await reader.part(part)).part;
  for (const player of Object.values(at)) await player.stand(part);
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

const notesOf = (printed: string): string[] => music.measures.find(({ number }) => number === printed)!.notes.filter(({ rest }) => !rest).map(({ id }) => id);
const says = (role: keyof typeof SIZES, text: string | RegExp) => at[role].sentence().getByText(text).waitFor();
const proposals = async () => Object.values((await reader.part(part)).state.proposals);
const picture = (role: keyof typeof SIZES, name: string) => pages[role].screenshot({ path: join(PICTURES, `together-${name}.png`) });

describe('every command in words', PATIENT, () => {
  it('is said in the ledge, chosen from what may be meant, and done', async () => {
    const { principal } = pages;
    await at.principal.press(':');
    await principal.getByRole('combobox', { name: 'What to do, in words' }).pressSequentially('dark');
    await principal.getByRole('option', { name: /^stand light/ }).waitFor();
    await picture('principal', 'words');
    expect(await seriousViolations(principal)).toEqual([]);
    await at.principal.press('Enter');
    await principal.waitForFunction(() => document.documentElement.dataset.light === 'stand');
    await at.principal.press('Control+k');
    await principal.getByRole('combobox').pressSequentially('go to 5');
    await at.principal.press('Enter');
    await says('principal', 'Measure 5');
    await at.principal.press('Control+k');
    await principal.getByRole('combobox').pressSequentially('nonsense');
    await principal.getByText('Nothing here is called “nonsense”').waitFor();
    await at.principal.press('Escape', 'l');
    await principal.getByRole('combobox').waitFor({ state: 'detached' });
  });

  it('the sheet of keys stands at the question mark and at a touch', async () => {
    const { principal, player } = pages;
    await at.principal.press('?');
    const sheet = principal.getByRole('region', { name: 'Keys on the stand' });
    await sheet.getByRole('button', { name: 'say in words what to do' }).waitFor();
    expect(await sheet.locator('[data-key-row="command"] dt').innerText()).toBe(':, Ctrl k');
    await picture('principal', 'keys');
    expect(await seriousViolations(principal)).toEqual([]);
    await at.principal.press('Escape');
    await sheet.waitFor({ state: 'detached' });
    await player.getByRole('button', { name: 'keys', exact: true }).tap();
    const touched = player.getByRole('region', { name: 'Keys on the stand' });
    await touched.waitFor();
    await picture('player', 'keys-tablet');
    await touched.getByRole('button', { name: 'say in words what to do' }).tap();
    await touched.waitFor({ state: 'detached' });
    await player.getByRole('combobox', { name: 'What to do, in words' }).waitFor();
    await player.getByRole('button', { name: 'leave it' }).tap();
    expect(faults).toEqual([]);
  });
});

describe('two people', PATIENT, () => {
  it('one names the other, completed from the section’s people; the other’s ledge says so', async () => {
    const { principal } = pages;
    await at.principal.goTo('46');
    await at.principal.press('Enter', 's');
    await principal.getByRole('combobox', { name: /^Say something about 46a/ }).pressSequentially('@mar');
    await principal.getByRole('option', { name: /^Marek Dvorsin/ }).waitFor();
    await picture('principal', 'naming');
    expect(await seriousViolations(principal)).toEqual([]);
    await at.principal.press('Enter');
    await principal.getByRole('combobox').pressSequentially('what of Bela’s?');
    await at.principal.press('Enter');
    await principal.locator('.talk .named').getByText('Marek Dvorsin').waitFor();
    await says('player', 'Ilse Tarnow names you, measure 46.');
    const comment = Object.values((await reader.part(part)).state.comments).find(({ mentions }) => mentions)!;
    expect(comment).toMatchObject({ text: '@Marek Dvorsin what of Bela’s?', mentions: [{ name: 'Marek Dvorsin' }] });
  });

  it('the other finds it in what waits, goes there, and votes', async () => {
    const { player } = pages;
    await at.player.press('Shift+N');
    const waits = player.getByRole('region', { name: 'What waits for you' });
    await waits.getByRole('button', { name: 'Ilse Tarnow, measure 46: “@Marek Dvorsin what of Bela’s?”' }).waitFor();
    expect(await waits.getByRole('button').first().evaluate((button) => button === document.activeElement)).toBe(true);
    await picture('player', 'waits');
    expect(await seriousViolations(player)).toEqual([]);
    await waits.getByRole('button', { name: '46c by Bela Korvath wants your vote.' }).focus();
    await at.player.press('Enter');
    await player.locator('.slip.chosen').waitFor();
    await at.player.press('+');
    const marek = (await reader.shelf()).sections[0]!.seats[1]!.person!.id;
    await expect.poll(async () => (await proposals()).find(({ proposed, from }) => proposed.name === 'Bela Korvath' && from === music.measures.find(({ number }) => number === '46')!.ordinal)!.votes, { timeout: 20_000 }).toMatchObject({ [music.measures.find(({ number }) => number === '46')!.ordinal]: { [marek]: 'for' } });
    await at.player.press('Escape', 'Shift+N');
    await waits.waitFor();
    expect(await waits.getByRole('button', { name: /46c by Bela Korvath/ }).count()).toBe(0);
    await at.player.press('Escape');
    await waits.waitFor({ state: 'detached' });
  });

  it('what waits stands on the shelf too, and leads to the stand', async () => {
    const { player } = pages;
    await player.goto(`${house.origin}/shelf`);
    const line = player.getByRole('region', { name: 'What waits for you' }).getByRole('link', { name: '23a by Wim Drachter wants your vote.' });
    await line.waitFor();
    await player.getByText('This library sends no letters.').waitFor();
    await picture('player', 'shelf');
    expect(await seriousViolations(player)).toEqual([]);
    await line.focus();
    await at.player.press('Enter');
    await player.waitForURL((url) => url.pathname === `/stand/${part}`);
    await player.locator('[data-note]').first().waitFor({ timeout: 120_000 });
    expect(faults).toEqual([]);
  });
});

describe('the run-through', PATIENT, () => {
  it('goes through three open measures by n and Enter alone, counts them and says when it is done', async () => {
    const { player, principal } = pages;
    await at.player.goTo('10');
    await at.player.press('2');
    await at.player.lay('The second finger, for the line.');
    await player.getByText(/laid under the part/).waitFor();
    await at.principal.press('Escape');
    await at.principal.goTo('1');
    await principal.locator('[data-thread-open]').nth(2).waitFor();
    await at.principal.press('n');
    await says('principal', /^Measure 10, open measure 1 of 3\. 10a lies here, 0 for, 0 against\. Enter inks it in, n goes on\.$/);
    await picture('principal', 'run');
    await at.principal.press('Enter');
    await says('principal', /^10a is inked in, one mark\. n opens the next; two measures still open\.$/);
    await at.principal.press('n');
    await says('principal', /^Measure 23, open measure 2 of 3\./);
    await at.principal.press('Enter', 'n');
    await says('principal', /^Measure 46, open measure 3 of 3\. 46a leads, 6 for, 2 against\./);
    await at.principal.press('Enter');
    await says('principal', /^46a is inked in, .* 46b, 46c still here: a sets aside\. No other measure is open\.$/);
    await at.principal.press('n');
    await says('principal', 'Three open measures gone through: 2 decided, 1 still open. n begins again.');
    await says('player', /^Your 10a is inked in by Ilse Tarnow\.$/);
    await expect.poll(async () => (await proposals()).filter(({ status }) => status === 'open').map(({ letter }) => letter), { timeout: 20_000 }).toEqual(['b', 'c']);
    expect(faults).toEqual([]);
  });
});

describe('the run-through on a phone', PATIENT, () => {
  it('is two large words, each wide enough for a thumb', async () => {
    const { principal } = pages;
    await principal.setViewportSize({ width: 390, height: 844 });
    await at.principal.press('n');
    await says('principal', /^Measure 46, open measure 1 of 1\./);
    for (const name of ['ink in', 'next open']) {
      const box = await principal.locator('.stand-ledge .moves').getByRole('button', { name, exact: true }).boundingBox();
      expect(box!.height).toBeGreaterThanOrEqual(44);
      expect(box!.width).toBeGreaterThanOrEqual(44);
    }
    await picture('principal', 'run-phone');
    expect(await seriousViolations(principal)).toEqual([]);
    await principal.setViewportSize(SIZES.principal);
    // Laid out anew for the wider page before anything more is asked of it.
    await expect.poll(() => principal.evaluate(() => {
      const rows = [...document.querySelectorAll('[data-system]')].map((row) => row.querySelector('svg.system')?.getBoundingClientRect().width ?? 0);
      return rows.length > 10 && rows.slice(0, -1).every((width) => width > innerWidth / 2);
    }), { timeout: 60_000 }).toBe(true);
    expect(faults).toEqual([]);
  });
});

describe('marks copied to the same figure elsewhere', PATIENT, () => {
  const list = () => pages.principal.getByRole('form', { name: 'The same figure elsewhere in this part' });

  it('are laid in pencil at the places kept, in one step, and taken back in one', async () => {
    const { principal } = pages;
    await at.principal.press('Escape');
    await at.principal.goTo('61');
    await at.principal.press('Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowRight', 'u', 'Shift+Y');
    await list().waitFor();
    await picture('principal', 'elsewhere');
    expect(await seriousViolations(principal)).toEqual([]);
    const places = await list().getByRole('checkbox').count();
    expect(places).toBeGreaterThanOrEqual(4);
    // The first place is in the same measure, the second in measure 62: both are left out.
    await at.principal.press('Space', 'Tab', 'Space', 'Enter');
    await list().waitFor({ state: 'detached' });
    await says('principal', /pencilled in at two places\. Enter lays them as a slip, z takes them all back\./);
    const first = notesOf('65');
    for (const note of [first[0]!, first[4]!]) await at.principal.mark(note, 'bow:up', 'proposed').waitFor();
    expect(await at.principal.mark(notesOf('62')[0]!, 'bow:up', 'proposed').count()).toBe(0);
    await at.principal.press('z');
    for (const note of [first[0]!, first[4]!]) await at.principal.mark(note, 'bow:up', 'proposed').waitFor({ state: 'detached' });
    expect(await at.principal.mark(notesOf('61')[0]!, 'bow:up', 'proposed').count()).toBe(1);
    await at.principal.press('z');
    expect(faults).toEqual([]);
  });
});
