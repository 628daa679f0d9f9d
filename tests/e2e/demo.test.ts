import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PartView } from '../../core/agreement/wire/http.ts';
import { demoScore } from '../../server/demo/score/writeScore.ts';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { misplaced } from './engraved.ts';
import { added, owedSigns, signsOf } from './exported.ts';
import { openHouse, type House } from './house.ts';
import { openLine, type Line } from './line.ts';
import { Librarian } from './librarian.ts';
import { comparesTwo, readsHistory } from './pictures.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const SIZES = { principal: { width: 1440, height: 900 }, player: { width: 1024, height: 1366 }, librarian: { width: 1440, height: 900 } };
const PICTURES = process.env.BOWLINE_PICTURES ?? mkdtempSync(join(tmpdir(), 'bowline-pictures-'));
const PATIENT = { timeout: 240_000 };
const WORK = 'Low Water, The Crossing';
const WHY = 'Third finger on the G, the run stays under the hand.';
const LATER = 'Second position keeps it on one string.';

let house: House, line: Line, browser: Browser;
const contexts = {} as Record<keyof typeof SIZES, BrowserContext>;
const pages = {} as Record<keyof typeof SIZES, Page>;
const faults: string[] = [];
let principal: Player, player: Player, librarian: Librarian, reader: Reader, part: PartView;

/** Note of a measure as printed, from 1, as the library numbers it. */
const note = (measure: string, nth: number): string => part.part.measures.find(({ number }) => number === measure)!.notes.find(({ index }) => index === nth - 1)!.id;
const proposalsSaying = async (why: string) => Object.values((await reader.part(part.id)).state.proposals).filter((proposal) => proposal.why === why);

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  line = await openLine(house.origin);
  for (const role of ['principal', 'player', 'librarian'] as const) {
    contexts[role] = await browser.newContext({ viewport: SIZES[role], acceptDownloads: true, hasTouch: role === 'player' });
    const page = (pages[role] = await contexts[role].newPage());
    page.setDefaultTimeout(40_000);
    page.on('pageerror', (fault) => faults.push(`${role}: ${fault.message}`));
    const link = house.links.get(role)!;
    await signIn(page, role === 'player' ? link.replace(house.origin, line.origin) : link);
  }
  reader = new Reader(contexts.librarian, house.origin);
  part = await reader.part((await reader.work('Low Water')).parts[0]!.id);
  principal = new Player(pages.principal, house.origin);
  player = new Player(pages.player, line.origin);
  librarian = new Librarian(pages.librarian, house.origin);
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await line?.close();
  await house?.stop();
});

describe('the librarian and the scores', PATIENT, () => {
  it('a broken file is refused with its line, and one without sense with its measure; nothing of them is on the shelf', async () => {
    const lines = demoScore().split('\n');
    const at = lines.findIndex((line) => line.includes('</note>'));
    const torn = lines.map((line, i) => (i === at ? line.replace('</note>', '</nota>') : line)).join('\n');
    await librarian.folder('Tide Tables');
    await librarian.layScore('torn.musicxml', torn);
    await librarian.sentence().filter({ hasText: new RegExp(`torn.musicxml was not laid in the folder.*line ${at + 1}\\b`, 's') }).waitFor();
    await librarian.layScore('no-letter.musicxml', demoScore().replace('<step>G</step><octave>5', '<step>H</step><octave>5'));
    await librarian.sentence().filter({ hasText: /no-letter.musicxml was not laid in the folder.*measure 9\b/s }).waitFor();
    expect((await reader.shelf()).programmes[0]!.works).toHaveLength(1);
  });

  it('a good file comes to the shelf with all its string parts, each with its section', async () => {
    await librarian.layScore('high-water.musicxml', demoScore().replaceAll('Low Water', 'High Water'));
    await librarian.sentence().filter({ hasText: 'five string parts' }).waitFor();
    const { parts } = await reader.work('High Water');
    expect(parts.map(({ name, section }) => [name, section?.name])).toEqual(['Violin I', 'Violin II', 'Viola', 'Violoncello', 'Double bass'].map((name) => [name, name]));
  });
});

describe('three people on one part', PATIENT, () => {
  it('the principal and a player open the same part, and each sees the other there', async () => {
    await principal.stand(part.id);
    await player.stand(part.id);
    await pages.principal.getByText('2 of 12 here').waitFor();
    await player.goTo('20');
    await principal.goTo('19');
    await pages.principal.locator('main .present', { hasText: 'Marek Dvorsin' }).waitFor();
  });

  it('a measure that is gone to while the part is still being engraved is in view when it is', async () => {
    await principal.stand(part.id);
    await principal.goTo('80');
    const area = pages.principal.locator(`[data-note="${note('80', 1)}"]`);
    await area.waitFor();
    await pages.principal.waitForFunction((systems) => document.querySelectorAll('main .sys').length >= systems, await pages.principal.locator('[data-system]').count());
    const { y } = (await area.boundingBox())!;
    expect(y).toBeGreaterThan(0);
    expect(y).toBeLessThan(SIZES.principal.height);
  });

  it('the part stands note for note where time and pitch put it, and every note can be touched', async () => {
    await expect.poll(() => misplaced(pages.principal, part.part), { timeout: 60_000 }).toEqual([]);
    await expect.poll(() => misplaced(pages.player, part.part), { timeout: 60_000 }).toEqual([]);
  });

  it('a finding appears while typing, before anything is laid, and goes when the mark is taken back', async () => {
    await principal.goTo('18');
    await principal.press('0');
    await principal.finding('fingering/zero-is-open', note('18', 1)).waitFor();
    await principal.press('z');
    await principal.finding('fingering/zero-is-open', note('18', 1)).waitFor({ state: 'detached' });
  });

  it('the next place to watch is where desk 4 would change bow together, and the sentence says what to do', async () => {
    await principal.press('w');
    await principal.sentence().filter({ hasText: /Measure 49.*Desk 4: the two players change bow 0.33 s apart in measure 49/s }).waitFor();
    await principal.goTo('18');
  });

  it('what the principal proposes by keyboard the player sees without loading the page again', async () => {
    await player.goTo('18');
    await principal.press('3', 'u', 'ArrowRight', '2', 'ArrowRight', '1', 'c');
    await principal.mark(note('18', 1), 'finger:3', 'proposed').waitFor();
    await principal.lay(WHY);
    await player.press('Enter');
    await player.slip(WHY).waitFor();
  });

  it('the player votes and says something, and the principal sees both', async () => {
    await player.press('+', 's');
    await player.write(/Say something/, 'It lies well at the tempo.');
    await principal.press('Enter');
    await principal.slip(WHY).getByText('It lies well at the tempo.').waitFor();
    await principal.slip(WHY).getByRole('img', { name: /^1 for, 0 against/ }).waitFor();
  });

  it('the principal inks the slip in, and for the player pencil turns to ink', async () => {
    await principal.press('Enter');
    await player.mark(note('18', 1), 'finger:3', 'adopted').waitFor();
    expect(await proposalsSaying(WHY)).toMatchObject([{ status: 'adopted', decided: { name: 'Ilse Tarnow' } }]);
  });

  it('on the tablet a note is touched and a sign on the ledge writes on it', async () => {
    await player.press('Escape');
    await pages.player.locator(`[data-note="${note('19', 1)}"]`).tap();
    await pages.player.getByRole('button', { name: 'finger 2', exact: true }).tap();
    await player.mark(note('19', 1), 'finger:2', 'proposed').waitFor();
    await player.press('z');
    await player.mark(note('19', 1), 'finger:2', 'proposed').waitFor({ state: 'detached' });
  });
});

describe('a player on a train', PATIENT, () => {
  it('marks on without a line, loads the page again, and what was laid goes round when the line is back', async () => {
    await player.goTo('20');
    await contexts.player.setOffline(true);
    await player.sentence().filter({ hasText: 'No line to the library' }).waitFor();
    await player.press('2', 'Shift+Digit1');
    await player.lay(LATER);
    await player.sentence().filter({ hasText: /one mark waits in your pencil/i }).waitFor();
    // The page itself can be fetched again, the line to the library not yet.
    line.cut = true;
    await contexts.player.setOffline(false);
    await player.stand(part.id);
    await player.sentence().filter({ hasText: /one mark waits in your pencil/i }).waitFor();
    expect(await proposalsSaying(LATER)).toEqual([]);
    line.cut = false;
    await principal.goTo('20');
    await principal.press('Enter');
    await principal.slip(LATER).waitFor();
    expect(await proposalsSaying(LATER)).toMatchObject([{ status: 'open', proposed: { name: 'Marek Dvorsin' } }]);
  });
});

describe('fingerings asked for at the stand', PATIENT, () => {
  const OFFERED = 'One of those that were worked out; it stays in one place.';

  it('hang under the measure as slips, with the hand over time on the notes’ own places', async () => {
    await principal.goTo('9');
    await principal.press('f');
    const offers = pages.principal.locator('.offers');
    await offers.locator('article').nth(4).waitFor();
    const played = part.part.measures.find(({ number }) => number === '9')!.notes.filter(({ rest }) => !rest).map(({ id }) => id);
    const drawn = await pages.principal.locator('svg.hand [data-hand-note]').evaluateAll((notes) => notes.map((one) => one.getAttribute('data-hand-note')));
    expect(drawn).toEqual(played);
    for (const id of played) {
      const [onStaff, inPicture] = await Promise.all([pages.principal.locator(`[data-note="${id}"]`).boundingBox(), pages.principal.locator(`[data-hand-note="${id}"] .ground`).boundingBox()]);
      const centre = inPicture!.x + inPicture!.width / 2;
      expect(centre).toBeGreaterThan(onStaff!.x);
      expect(centre).toBeLessThan(onStaff!.x + onStaff!.width);
    }
    expect(await pages.principal.locator('svg.hand').getAttribute('aria-label')).toMatch(/shift/);
    expect(await seriousViolations(pages.principal)).toEqual([]);
    await pages.principal.screenshot({ path: join(PICTURES, 'fingerings.png') });
  });

  it('light the note in hand in staff, slip and picture as the arrows walk', async () => {
    await principal.press('ArrowRight');
    await pages.principal.locator(`[data-hand-note="${note('9', 2)}"].lit`).waitFor();
    await principal.press('ArrowLeft');
    await pages.principal.locator(`[data-hand-note="${note('9', 1)}"].lit`).waitFor();
  });

  it('outline on the staff the note that the pointer is on in the picture, and the other way round', async () => {
    const page = pages.principal;
    const id = note('9', 2);
    await page.locator(`[data-hand-note="${id}"]`).hover();
    await page.locator(`.system [data-pointed="${id}"]`).waitFor();
    await page.locator(`[data-note="${note('9', 3)}"]`).hover();
    await page.locator(`[data-hand-note="${note('9', 3)}"].lit`).waitFor();
    await page.mouse.move(2, 2);
    await page.locator('.system [data-pointed]').waitFor({ state: 'detached' });
  });

  it('lie two about one staff, compared in words and as rows, each step the same note everywhere', async () => {
    await comparesTwo(principal, part.part.measures.find(({ number }) => number === '9')!.notes.filter(({ rest }) => !rest).map(({ id }) => id));
  });

  it('are asked for again with another aim, and told note by note, by keyboard alone', async () => {
    const page = pages.principal;
    const smoothest = page.getByRole('button', { name: 'the smoothest line' });
    const reachByTab = async (wanted: string, key: 'Tab' | 'Shift+Tab'): Promise<void> => {
      for (let i = 0; i < 80; i++) {
        await principal.press(key);
        if ((await page.evaluate(() => document.activeElement?.textContent ?? '')).startsWith(wanted)) return;
      }
      throw new Error(`${wanted} is not reached by ${key}`);
    };
    await reachByTab('the smoothest line', 'Tab');
    await principal.press('Enter');
    await page.locator('.offers article').nth(1).waitFor();
    expect(await smoothest.getAttribute('aria-pressed')).toBe('true');
    await reachByTab('Note by note', 'Tab');
    await principal.press('Enter');
    await page.locator('.offers tr.lit').waitFor();
    expect(await page.locator('.offers .fold-inside tr').count()).toBe(3);
    await principal.press('Enter');
    await page.locator('.offers .fold-inside').waitFor({ state: 'detached' });
  });

  it('are taken into the pencil by Enter, laid as a slip, and seen by another player', async () => {
    await principal.press('ArrowDown');
    await pages.principal.locator('[data-offer="b"] article[aria-current="true"]').waitFor();
    await principal.press('Enter');
    await pages.principal.locator('.offers').waitFor({ state: 'detached' });
    await pages.principal.locator(`main [data-on="${note('9', 1)}"][data-mark^="finger:"][data-state="proposed"]`).first().waitFor();
    await principal.lay(OFFERED);
    await player.goTo('9');
    await player.press('Enter');
    await player.slip(OFFERED).waitFor();
    expect((await proposalsSaying(OFFERED))[0]!.marks.length).toBeGreaterThan(0);
    await principal.press('Escape');
    await player.press('Escape');
  });

  it('are in the history of their measure, opened by key', async () => {
    await readsHistory(principal, '9', [/laid slip 9\w: One of those that were worked out/]);
  });

  it('follow the player’s own hand, which only that player sees', async () => {
    const { page } = player;
    await page.goto(`${line.origin}/`);
    await page.getByLabel(/Reach:/).fill('85');
    await page.getByRole('checkbox', { name: 'my fourth finger is short' }).check();
    await page.getByRole('button', { name: 'keep it for me' }).click();
    await page.getByRole('button', { name: 'forget it' }).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await pages.principal.goto(`${house.origin}/`);
    await pages.principal.getByText('Reach: 100 %').waitFor();
    await page.getByRole('button', { name: 'forget it' }).click();
    await page.getByText('Reach: 100 %').waitFor();
    await player.stand(part.id);
    await principal.stand(part.id);
  });
});

describe('what the librarian gives out', PATIENT, () => {
  it('a locked part takes no more proposals: what was pencilled before is refused in a sentence', async () => {
    await principal.press('Escape');
    await principal.goTo('21');
    await principal.press('1');
    await principal.mark(note('21', 1), 'finger:1', 'proposed').waitFor();
    await librarian.folder('Tide Tables');
    await librarian.choose(WORK, 'Violin I');
    await librarian.press('lock');
    await librarian.sentence().filter({ hasText: 'locked' }).waitFor();
    await principal.lay('Too late.');
    await principal.sentence().filter({ hasText: 'Not written: the part is locked for printing' }).waitFor();
    expect(await proposalsSaying('Too late.')).toEqual([]);
    await principal.press('z');
    await principal.mark(note('21', 1), 'finger:1', 'proposed').waitFor({ state: 'detached' });
  });

  it('the parts for the section and for both seats of a desk have exactly the marks that were inked in', async () => {
    const { state, part: music } = await reader.part(part.id);
    const before = signsOf(demoScore(), 'P1');
    const seats = [['for the whole section', null], ['for desk 4 outside, Wim Drachter', '4o'], ['for desk 4 inside, Noor Asmandi', '4i']] as const;
    for (const [name, seat] of seats) {
      const after = signsOf((await librarian.take(`${name}, .musicxml`)).text, 'P1');
      expect(added(before, after).sort()).toEqual(owedSigns(state, music, seat).sort());
      expect(added(after, before)).toEqual([]);
    }
  });

  it('the list of changes names measure, mark, person and reason', async () => {
    const { text, fileName } = await librarian.take('list of changes, .csv');
    expect(fileName).toMatch(/\.csv$/);
    const row = text.split(/\r?\n/).find((line) => line.includes(WHY) && line.includes('finger 3'));
    expect(row).toMatch(/\b18\b/);
    expect(row).toContain('Ilse Tarnow');
  });
});

describe('another language', PATIENT, () => {
  it('German chosen on the Shelf changes the words at once, and they are German after a reload and on the stand', async () => {
    const page = pages.player;
    await page.goto(`${line.origin}/shelf`);
    await page.getByRole('button', { name: 'Deutsch' }).click();
    await page.getByRole('heading', { name: 'Regal' }).waitFor();
    await page.getByRole('navigation', { name: 'Orte' }).getByText('Notenpult').waitFor();
    await page.reload();
    await page.getByRole('heading', { name: 'Regal' }).waitFor();
    expect(await page.evaluate(() => [document.documentElement.lang, document.title])).toEqual(['de', 'Regal · Bowline']);
    expect(await page.getByRole('button', { name: 'Deutsch' }).getAttribute('aria-pressed')).toBe('true');
    expect(await seriousViolations(page)).toEqual([]);
    await player.stand(part.id);
    await page.getByRole('toolbar', { name: 'Zeichen' }).getByRole('button', { name: /^Abstrich/ }).waitFor();
    await page.goto(`${line.origin}/shelf`);
    await page.getByRole('button', { name: 'English' }).click();
    await page.getByRole('heading', { name: 'Shelf' }).waitFor();
    await player.stand(part.id);
  });
});

describe('every screen', PATIENT, () => {
  it('has no serious fault that axe knows of, at the size of a laptop and of a tablet', async () => {
    const programme = (await reader.shelf()).programmes[0]!.id;
    const found: string[] = [];
    for (const [role, paths] of [['principal', [`/stand/${part.id}?m=47`, `/section/${part.id}`]], ['player', [`/stand/${part.id}?m=47`, `/section/${part.id}`, '/sign-in']], ['librarian', ['/shelf', `/folder/${programme}`]]] as const) {
      const page = pages[role];
      for (const path of paths) {
        await page.goto((role === 'player' ? line.origin : house.origin) + path);
        await page.locator(path.startsWith('/stand') ? '[data-note]' : 'h1').first().waitFor({ timeout: 120_000 });
        if (path.startsWith('/stand')) {
          await page.keyboard.press('Enter');
          await page.getByRole('article').first().waitFor();
          await page.waitForFunction((systems) => document.querySelectorAll('main .sys').length >= systems, await page.locator('[data-system]').count());
        }
        if (path.startsWith('/section')) await page.getByRole('img', { name: /seats at their desks/ }).waitFor();
        found.push(...(await seriousViolations(page)).map((line) => `${role} ${path} ${line}`));
        await page.screenshot({ path: join(PICTURES, `${path.split('/')[1]}-${page.viewportSize()!.width}.png`) });
      }
    }
    expect(found).toEqual([]);
  });

  it('threw nothing all the while', () => {
    expect(faults).toEqual([]);
  });
});
