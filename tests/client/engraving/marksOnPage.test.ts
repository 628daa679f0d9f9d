import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isStringPart, type Part } from '../../../core/music/part.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { demoScore } from '../../../server/demo/score/writeScore.ts';
import { startBrowser } from '../../support/browser.ts';
import { openFile } from '../../../server/files/openFile.ts';
import { chance } from '../../support/chance.ts';
import { CORPUS, corpusPath } from '../../support/corpus.ts';
import { counted, denseMarks, named } from '../../support/denseMarks.ts';
import { engravePart, pageOf } from '../../support/engravedPart.ts';
import { inkOnPage } from '../../support/inkBoxes.ts';

/** Twenty parts: a line of every instrument, orchestra, quartet and alone. */
const PARTS: readonly [score: string, parts: readonly number[]][] = [
  ['openscore-orchestra/Haydn_104_1.mxl', [0, 1, 2, 3, 4]],
  ['openscore-orchestra/Beethoven_Op.67_2.mxl', [0, 1, 2, 3]],
  ['openscore-orchestra/Beethoven_Op.21_3.mxl', [0, 2, 3]],
  ['openscore-orchestra/Schubert_D.485_1.mxl', [0, 1, 2]],
  ['bach-violin-solo/bwv1001.mxl', [0]],
  ['violin-printed-marks/wieniawski_op10_1.musicxml', [0]],
  ['violin-printed-marks/katski_op12_violin.mxl', [0]],
  ['openscore-orchestra/Bach_Brandenburg3_BWV.1048_2.mxl', [0, 1]],
];
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

const countBy = (names: readonly string[]): Map<string, number> => names.reduce((counts, name) => counts.set(name, (counts.get(name) ?? 0) + 1), new Map<string, number>());

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

  describe.skipIf(!CORPUS)('of twenty real parts written full (needs CORPUS_DIR)', { timeout: 600_000 }, () => {
    it.each(PARTS)('%s: each on its note, bows above the staff; what touches something is counted', async (score, chosen) => {
      const opened = await openFile(readFileSync(corpusPath(score)), score);
      if (!opened.ok) throw new Error(opened.fault.text);
      const parts = partsIn(opened.text);
      for (const nth of chosen) {
        const one = await measured(opened.text, parts[nth]!, `${score} ${nth}`);
        standsRight(one);
        const kinds = countBy(one.found.touches.map(({ kind }) => kind));
        console.info(`${score} ${parts[nth]!.name}: ${one.marks.length} marks, ${[...kinds].map(([kind, count]) => `${count} over a ${kind}`).join(', ') || 'none touches anything'}`);
        // Not one in a hundred; chosen, not measured.
        expect(one.found.touches.length).toBeLessThan(one.marks.length / 100);
      }
    });
  });
});
