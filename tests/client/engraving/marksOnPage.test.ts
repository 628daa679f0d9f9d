import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isStringPart, type Part } from '../../../core/music/part.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { demoScore } from '../../../server/demo/score/writeScore.ts';
import { startBrowser } from '../../support/browser.ts';
import { chance } from '../../support/chance.ts';
import { counted, denseMarks, named } from '../../support/denseMarks.ts';
import { engravePart, pageOf } from '../../support/engravedPart.ts';
import { inkOnPage } from '../../support/inkBoxes.ts';

const PICTURES = process.env.BOWLINE_PICTURES;

let browser: Browser;

function partsIn(text: string): Part[] {
  const read = readScore(text);
  if (!read.ok) throw new Error(read.fault.text);
  return read.score.parts.filter(isStringPart).filter(({ measures }) => measures.length > 0);
}

/** Engraves a part written full, lays it into the browser and measures it there. */
async function measured(text: string, part: Part, name: string) {
  const marks = denseMarks(part, chance(part.measures.length));
  const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  try {
    await page.setContent(pageOf(await engravePart(text, part), marks), { waitUntil: 'load', timeout: 120_000 });
    await page.evaluate(() => document.fonts.ready);
    const found = await page.evaluate(inkOnPage);
    if (PICTURES) await page.screenshot({ path: join(PICTURES, `${name.replace(/\W+/g, '-')}.png`), fullPage: true, clip: { x: 0, y: 0, width: 1200, height: 2400 } });
    return { marks, found };
  } finally {
    await page.close();
  }
}

type Measured = Awaited<ReturnType<typeof measured>>;

function standsRight({ marks, found }: Measured): void {
  expect(counted(found.marks)).toEqual(counted(named(marks)));
  expect(found.marks.filter(({ name, above }) => /^(bow|retake|hooked)/.test(name) && above < 0)).toEqual([]);
  // A reach stands beside its figure; words begin at their note.
  expect(found.marks.filter(({ name, right }) => !/^(reach|text)/.test(name) && !(Math.abs(right) < 1))).toEqual([]);
}

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

describe('marks on the engraved page, measured in a browser', { timeout: 240_000 }, () => {
  it('of the demo piece written full: each on its note, bows above the staff, none over another, a notehead or words', async () => {
    const text = demoScore();
    for (const part of partsIn(text)) {
      const one = await measured(text, part, `demo ${part.name}`);
      standsRight(one);
      expect(one.found.touches).toEqual([]);
    }
  });
});
