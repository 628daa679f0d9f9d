import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Me } from '../../core/agreement/wire/http.ts';
import { startBrowser } from '../support/browser.ts';
import { decoded, Letterbox } from '../support/letterbox.ts';
import { CLIENT, TestProvider } from '../support/provider.ts';
import { violations } from './axe.ts';
import { openHouse, type House } from './house.ts';
import { signIn } from './reader.ts';

const PICTURES = process.env.BOWLINE_PICTURES;
const SIZES = { laptop: { width: 1280, height: 800 }, tablet: { width: 820, height: 1180 }, phone: { width: 390, height: 844 } };
const ADDRESS = 'ruth@varnholm.example';
const PASSWORD = 'heron under wet slate roofs';

const box = new Letterbox();
let provider: TestProvider, house: House, browser: Browser, ruth: BrowserContext, page: Page;

/** The link in the letter that came last. */
async function linkInLetter(subject: RegExp): Promise<string> {
  await expect.poll(() => box.letters.map(({ text }) => decoded(text)).findLast((text) => subject.test(text)), { timeout: 20_000 }).toBeDefined();
  const text = box.letters.splice(0).map((letter) => decoded(letter.text)).findLast((one) => subject.test(one))!;
  return /http\S+\/sign-in\?\S+/.exec(text)![0];
}

/** What of a screen breaks a rule, in every size; and a picture of each where they are wanted. */
async function lookedAt(name: string): Promise<string[]> {
  const found: string[] = [];
  for (const [size, viewport] of Object.entries(SIZES)) {
    await page.setViewportSize(viewport);
    found.push(...(await violations(page, 'all')).map((line) => `${name} ${size}: ${line}`));
    if (await page.evaluate(() => document.querySelector('main')!.scrollWidth > document.querySelector('main')!.clientWidth)) found.push(`${name} ${size}: runs past the edge`);
    if (PICTURES) await page.screenshot({ path: join(PICTURES, `${name}-${size}.png`) });
  }
  await page.setViewportSize(SIZES.laptop);
  return found;
}

const leave = async () => {
  await page.getByRole('button', { name: 'leave', exact: true }).click();
  await page.getByRole('button', { name: 'come in', exact: true }).waitFor();
};
const onShelf = () => page.getByRole('heading', { name: 'Shelf' }).waitFor();
const unfold = () => page.locator('[data-fold="my-sign-in"] .fold-word').click();
const mine = () => page.locator('.my-sign-in');
const said = (text: string | RegExp) => page.getByText(text).first().waitFor();

beforeAll(async () => {
  const smtp = await box.open();
  [house, browser] = await Promise.all([
    openHouse(false, async (origin) => {
      provider = await TestProvider.open(`${origin}/api/sign-in/identity/back`);
      provider.who = 'ruth-4';
      return { BOWLINE_ORIGIN: origin, SMTP_URL: smtp, MAIL_FROM: 'Bowline <bowline@varnholm.example>', OIDC_ISSUER: provider.issuer, OIDC_CLIENT_ID: CLIENT.clientId, OIDC_CLIENT_SECRET: CLIENT.clientSecret, OIDC_NAME: 'Varnholm House' };
    }),
    startBrowser(),
  ]);
  ruth = await browser.newContext({ viewport: SIZES.laptop, reducedMotion: 'reduce' });
  page = await ruth.newPage();
  page.setDefaultTimeout(30_000);
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
  await provider?.close();
  await box.close();
});

describe('coming in', { timeout: 120_000 }, () => {
  it('the librarian invites somebody by letter, and sees the invitation as open', async () => {
    const librarian = await (await browser.newContext({ viewport: SIZES.laptop })).newPage();
    await signIn(librarian, house.links.get('librarian')!);
    await librarian.getByLabel('A new person').fill('Ruth Ambler');
    await librarian.getByLabel('E-mail, for a letter').fill(ADDRESS);
    await librarian.locator('form', { has: librarian.getByLabel('A new person') }).getByRole('button').last().click();
    await librarian.getByText(`Ruth Ambler is invited; the letter went to ${ADDRESS}.`).waitFor();
    await librarian.getByText(`by letter to ${ADDRESS}`).waitFor();
    if (PICTURES) await librarian.locator('.librarian').screenshot({ path: join(PICTURES, 'invited.png') });
    await librarian.context().close();
  });

  it('the letter’s link asks how she wants to come in, and brings her in', async () => {
    await page.goto(await linkInLetter(/invites you/));
    await said(/You are invited/);
    expect(await lookedAt('invitation')).toEqual([]);
    await page.getByRole('button', { name: 'come in', exact: true }).click();
    await onShelf();
    await said(`You sign in with ${ADDRESS}, by a link sent there.`);
  });

  it('she gives herself a password, seen or hidden, and hears why a weak one will not do', async () => {
    await unfold();
    const field = page.getByLabel('New password', { exact: true });
    expect([await field.getAttribute('type'), await field.getAttribute('autocomplete')]).toEqual(['password', 'new-password']);
    await field.fill('password1234');
    await page.getByRole('button', { name: 'show: New password' }).click();
    expect(await field.getAttribute('type')).toBe('text');
    await page.getByRole('button', { name: 'set it' }).click();
    await said(/one of the first that are guessed/);
    await field.fill(PASSWORD);
    await field.press('Enter');
    await said('Your password is set. You were signed out everywhere else.');
    await said(`You sign in with ${ADDRESS} and a password.`);
    await mine().scrollIntoViewIfNeeded();
    expect(await lookedAt('my-sign-in')).toEqual([]);
  });

  it('with address and password, by keys alone; a wrong one says what to do', async () => {
    await leave();
    expect(await lookedAt('door')).toEqual([]);
    await page.getByLabel('E-mail address').focus();
    await page.keyboard.type(ADDRESS);
    await page.keyboard.press('Tab');
    await page.keyboard.type('not the one at all');
    await page.keyboard.press('Enter');
    await said(/do not go together/);
    await page.getByLabel('Password', { exact: true }).fill(PASSWORD);
    await page.keyboard.press('Enter');
    await onShelf();
  });

  it('with a link that she has sent to herself', async () => {
    await leave();
    await page.getByRole('button', { name: 'send me a link' }).click();
    await said('Write your e-mail address first');
    await page.getByLabel('E-mail address').fill(ADDRESS);
    await page.getByRole('button', { name: 'send me a link' }).click();
    await said(`If the library knows ${ADDRESS}, a link is on its way there.`);
    await page.goto(await linkInLetter(/your link to sign in/));
    await onShelf();
  });

  it('with the orchestra’s own sign-in, once that knows her', async () => {
    await leave();
    await page.getByRole('button', { name: 'come in with Varnholm House' }).click();
    await said(/does not know you by it yet/);
    await page.getByLabel('E-mail address').fill(ADDRESS);
    await page.getByLabel('Password', { exact: true }).fill(PASSWORD);
    await page.keyboard.press('Enter');
    await onShelf();
    await unfold();
    await page.getByRole('button', { name: 'let Varnholm House bring me in' }).click();
    await page.waitForURL((url) => url.pathname === '/shelf');
    await onShelf();
    await leave();
    await page.getByRole('button', { name: 'come in with Varnholm House' }).click();
    await onShelf();
    await unfold();
    await mine().getByText('Varnholm House brings you in.').waitFor();
  });

  it('and ends from here what is open elsewhere', async () => {
    const elsewhere = await (await browser.newContext({ viewport: SIZES.phone, userAgent: 'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1' })).newPage();
    await elsewhere.goto(`${house.origin}/sign-in`);
    await elsewhere.getByLabel('E-mail address').fill(ADDRESS);
    await elsewhere.getByLabel('Password', { exact: true }).fill(PASSWORD);
    await elsewhere.keyboard.press('Enter');
    await elsewhere.getByRole('heading', { name: 'Shelf' }).waitFor();
    await page.reload();
    await unfold();
    await mine().getByText('Safari on a phone').waitFor();
    expect(await lookedAt('signed-in-twice')).toEqual([]);
    await page.getByRole('button', { name: 'end it: Safari on a phone' }).click();
    await said('That sign-in has ended.');
    expect((await elsewhere.request.get(`${house.origin}/api/me`)).status()).toBe(401);
    await elsewhere.context().close();
  });

  it('invited by a second ensemble while she is signed in, she comes to it as herself, and both are hers', async () => {
    const { DATABASE_URL: _own, ...env } = process.env;
    const told = await promisify(execFile)(process.execPath, ['server/cli/bowline.mjs', 'ensemble', 'add', 'North Quay Players', '--librarian', 'Edda Marlowe'], { env: { ...env, BOWLINE_DATA: house.data, BOWLINE_ORIGIN: house.origin } });
    const keeper = await (await browser.newContext({ viewport: SIZES.laptop })).newPage();
    await signIn(keeper, (JSON.parse(told.stdout) as { link: string }).link);
    await keeper.getByLabel('A new person').fill('R. Ambler');
    await keeper.locator('form', { has: keeper.getByLabel('A new person') }).getByRole('button').last().click();
    const link = await keeper.getByLabel('Sign-in link for R. Ambler; it opens once:').inputValue();
    expect(link).toContain('&invited');
    await page.goto(link);
    await said('You are invited, and signed in here as Ruth Ambler.');
    expect(await lookedAt('invited-again')).toEqual([]);
    await page.getByRole('button', { name: 'come in as Ruth Ambler' }).click();
    await onShelf();
    await said('North Quay Players');
    expect(((await (await page.request.get(`${house.origin}/api/me`)).json()) as Me).ensembles.map(({ name }) => name)).toEqual(['Our ensemble', 'North Quay Players']);
    await keeper.reload();
    await keeper.getByText('Ruth Ambler').first().waitFor();
    expect(await keeper.getByText('R. Ambler').count()).toBe(0);
    await keeper.context().close();
  });
});
