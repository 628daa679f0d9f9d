import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoScore } from '../../server/demo/score/writeScore.ts';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { openHouse, type House } from './house.ts';
import { Librarian } from './librarian.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const PICTURES = process.env.BOWLINE_PICTURES ?? mkdtempSync(join(tmpdir(), 'bowline-pictures-'));
const PATIENT = { timeout: 240_000 };

let house: House, browser: Browser, reader: Reader, part: string, programme: string;
const pages = {} as Record<'principal' | 'librarian', Page>;
const faults: string[] = [];

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  for (const role of ['principal', 'librarian'] as const) {
    const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
    const page = (pages[role] = await context.newPage());
    page.setDefaultTimeout(60_000);
    page.on('pageerror', (fault) => faults.push(`${role}: ${fault.message}`));
    await signIn(page, house.links.get(role)!);
    if (role === 'librarian') reader = new Reader(context, house.origin);
  }
  part = (await reader.work('Low Water')).parts[0]!.id;
  programme = (await reader.shelf()).programmes[0]!.title;
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

describe('earlier states of a part', PATIENT, () => {
  it('are one key away from the stand, the last change before and after as engraved', async () => {
    const { principal } = pages;
    const stand = new Player(principal, house.origin);
    await stand.stand(part);
    await stand.press('Shift+Q');
    await principal.locator('[data-pair]').first().waitFor();
    expect(new URL(principal.url()).pathname).toBe(`/revisions/${part}`);
    expect(await principal.locator('[data-pair]').first().locator('svg.snippet').count()).toBe(2);
    expect(await seriousViolations(principal)).toEqual([]);
    await principal.screenshot({ path: join(PICTURES, 'revisions-1280.png') });
  });

  it('are walked by arrows, and what is drawn follows', async () => {
    const { principal } = pages;
    const before = new URL(principal.url()).search;
    await principal.keyboard.press('Shift+ArrowLeft');
    await principal.waitForFunction((was) => location.search !== was, before);
    const between = new URLSearchParams(new URL(principal.url()).search);
    expect(Number(between.get('from'))).toBeLessThan(Number(between.get('to')));
  });

  it('are gone back to with a reason: what stood then stands again, and nothing is lost', async () => {
    const { principal } = pages;
    const inked = (await reader.part(part)).state.ink;
    await principal.goto(`${house.origin}/revisions/${part}?from=0&to=${(await reader.part(part)).head}`);
    const last = (await (await principal.request.get(`${house.origin}/api/parts/${part}/revisions`)).json()) as { revisions: { seq: number; kind: string }[] };
    const [first, second] = last.revisions.filter(({ kind }) => kind === 'inked');
    await principal.goto(`${house.origin}/revisions/${part}?from=${first!.seq}&to=${second!.seq}`);
    await principal.getByLabel('Why').fill('The first was the better one');
    await principal.getByRole('button', { name: 'go back', exact: true }).click();
    await principal.getByText('These marks stand again.').waitFor();
    const { state } = await reader.part(part);
    expect(state.ink.slice(0, inked.length).map(({ mark }) => mark)).toEqual(inked.map(({ mark }) => mark));
    const then = inked.filter((one) => one.inked.seq <= first!.seq).map(({ mark }) => JSON.stringify(mark)).sort();
    expect(state.ink.filter(({ superseded }) => !superseded).map(({ mark }) => JSON.stringify(mark)).sort()).toEqual(then);
  });
});

describe('from season to season', PATIENT, () => {
  it('the librarian puts a work’s marks by, and they stand in the archive, one link from the shelf', async () => {
    const { librarian } = pages;
    const desk = new Librarian(librarian, house.origin);
    await desk.folder(programme);
    await librarian.locator('[data-fold="put-by"] .fold-word').click();
    for (const [label, said] of [['Ensemble', 'Tidewater Orchestra'], ['Conductor', 'Marta Lindqvale'], ['Season', '2026/27']] as const) await librarian.getByLabel(label, { exact: true }).fill(said);
    await desk.press('put by');
    await librarian.getByText('The marks are put by as 2026/27, under Marta Lindqvale, Tidewater Orchestra.').waitFor();
    expect(await seriousViolations(librarian)).toEqual([]);
    await librarian.screenshot({ path: join(PICTURES, 'season-1280.png'), fullPage: true });
    await librarian.goto(`${house.origin}/shelf`);
    await librarian.getByRole('link', { name: 'The archive: marks of earlier seasons' }).click();
    await librarian.getByRole('heading', { name: 'Low Water' }).waitFor();
    expect(await seriousViolations(librarian)).toEqual([]);
    await librarian.screenshot({ path: join(PICTURES, 'archive-1280.png') });
  });

  it('next season the work is laid on the shelf again, and its marks are laid as slips', async () => {
    const { librarian } = pages;
    const desk = new Librarian(librarian, house.origin);
    await desk.folder(programme);
    await desk.layScore('again.musicxml', demoScore().replace(/<work-title>[^<]*</, '<work-title>Low Water, new edition<'));
    await librarian.getByRole('button', { name: /^Low Water, new edition, / }).first().click();
    await librarian.locator('[data-offer]').getByRole('button', { name: 'lay them as slips' }).click();
    await librarian.getByRole('status').filter({ hasText: 'Violin I:' }).waitFor();
    const again = (await reader.part((await reader.work('Low Water, new edition')).parts[0]!.id)).state;
    const kept = (await reader.part(part)).state.ink.filter(({ superseded }) => !superseded);
    expect(Object.values(again.proposals).flatMap(({ marks }) => marks)).toHaveLength(kept.length);
    expect(Object.values(again.proposals)[0]!.why).toBe('As played in 2026/27 under Marta Lindqvale (Tidewater Orchestra)');
  });

  it('the whole archive is taken along as a zip and taken in again', async () => {
    const { librarian } = pages;
    await librarian.goto(`${house.origin}/archive`);
    const [download] = await Promise.all([librarian.waitForEvent('download'), librarian.getByRole('link', { name: 'take the whole archive along' }).click()]);
    const bytes = readFileSync(await download.path());
    await librarian.getByLabel('take an archive in', { exact: true }).setInputFiles({ name: 'archive.zip', mimeType: 'application/zip', buffer: bytes });
    await librarian.getByText('1 were here already').waitFor();
  });
});

describe('a wrong note of the edition', PATIENT, () => {
  it('is written down at its measure on the stand and read by the librarian', async () => {
    const { principal, librarian } = pages;
    const stand = new Player(principal, house.origin);
    await stand.stand(part);
    await stand.goTo('5');
    await stand.press('Enter');
    await principal.locator('[data-fold="misprint"] .fold-word').click();
    await principal.getByLabel('It says', { exact: true }).fill('f natural');
    await principal.getByLabel('It should say', { exact: true }).fill('f sharp');
    await principal.getByRole('button', { name: 'write it down' }).click();
    await principal.getByText('is on the librarian’s list').waitFor();
    expect(await seriousViolations(principal)).toEqual([]);
    const desk = new Librarian(librarian, house.origin);
    await desk.folder(programme);
    // The folder keeps the part that was in hand last, of another season here.
    const cell = librarian.locator(`.part-cell[data-part="${part}"]`);
    if ((await cell.getAttribute('aria-pressed')) !== 'true') await cell.click();
    await librarian.locator('[data-fold="misprints"] .fold-word').click();
    await librarian.getByText('says f natural, should say f sharp').waitFor();
    expect(faults).toEqual([]);
  });
});
