import { describe, expect, it } from 'vitest';
import { glyphsOf } from '../../../core/engraving/marks/glyphOf.ts';
import type { PaperName } from '../../../core/print/paper.ts';
import { isInTheMusic } from '../../../server/print/markedText.ts';
import { printPart } from '../../../server/print/printPart.ts';
import { CORPUS, corpusPath, everySoMany } from '../../support/corpus.ts';
import { readPdf } from '../../support/pdfDrawing.ts';
import { collisions } from '../../support/printCollisions.ts';
import { fileOrder } from '../../support/printOrders.ts';
import { signsOn, staffHeights } from '../../support/printedSigns.ts';

/** Long and short, all instruments, rests of many measures, divided staves, printed marks; which of the string parts, and what it is printed on. */
const PARTS: [file: string, part: number, paper: PaperName, staff: number][] = [
  ['openscore-orchestra/Beethoven_Op.21_3.mxl', 4, 'b4', 7.5],
  ['openscore-orchestra/Haydn_104_1.mxl', 2, 'a4', 7.5],
  ['openscore-orchestra/Haydn_104_1.mxl', 4, '10x13', 8],
  ['openscore-orchestra/Beethoven_Op.67_2.mxl', 3, '9x12', 7.5],
  ['openscore-orchestra/Bruckner_WAB.105_3b_Trio.mxl', 0, 'a4', 7],
  ['openscore-orchestra/Bach_Brandenburg3_BWV.1048_2.mxl', 0, 'a4', 7.5],
  ['openscore-orchestra/Bach_Brandenburg3_BWV.1048_3.mxl', 8, 'b4', 8.5],
  ['openscore-orchestra/Beach_Op.32_2.mxl', 1, '9x12', 7.5],
  ['openscore-orchestra/Schubert_D.485_1.mxl', 2, 'b4', 7.5],
  ['openscore-orchestra/Beethoven_Op.125_1.mxl', 3, '10x13', 7.5],
  ['openscore-quartets/Haydn_String_Quartet_in_C_major__Hob.III65__Op.64_No.1_sq7127785.mxl', 3, 'a4', 7.5],
  ['violin-printed-marks/wieniawski_op10_1.musicxml', 0, 'a4', 7.5],
];

describe.skipIf(!CORPUS)('parts of real editions, written full of marks', () => {
  it.each(everySoMany(PARTS))('%s, string part %d on %s with staves of %d mm', async (file, place, paper, staff) => {
    const order = await fileOrder(corpusPath(file), place, 21, { paper, staff });
    const part = order.stored;
    const printed = await printPart(order);
    if (!printed.ok) throw new Error(printed.trouble.text);
    const pages = await readPdf(printed.files[0]!.bytes);

    const heights = pages.flatMap(staffHeights);
    expect(heights.length).toBeGreaterThan(0);
    for (const height of heights) expect(Math.abs(height - staff)).toBeLessThan(0.05);

    const wanted: Record<string, number> = {};
    for (const mark of order.marks.filter((one) => !isInTheMusic(one))) for (const { stroke } of glyphsOf(mark.value)) wanted[stroke ?? 'words'] = (wanted[stroke ?? 'words'] ?? 0) + 1;
    const drawn: Record<string, number> = {};
    for (const page of pages) for (const { stroke } of (await signsOn(page)).signs) drawn[stroke] = (drawn[stroke] ?? 0) + 1;
    expect(drawn).toEqual(wanted);
    expect(printed.warnings).toEqual([]);

    for (const page of pages) {
      expect(page.words).toContain(part.name);
      const ys = [...page.paths.flatMap(({ points }) => points.map(([, y]) => y)), ...page.texts.map(({ y }) => y)];
      expect(Math.min(...ys)).toBeGreaterThan(0);
      expect(Math.max(...ys)).toBeLessThan(page.height);
    }
    const touching = (await Promise.all(pages.map(collisions))).flat();
    const signs = Object.values(drawn).reduce((sum, n) => sum + n, 0);
    console.log(`${file} ${part.name}: ${part.measures.length} measures, ${pages.length} pages, ${heights.length} staves, ${signs} signs, ${touching.length} touching, turns ${printed.turns.map(({ kind, seconds }) => `${kind} ${seconds}`).join(', ')}`);
    expect(touching).toEqual([]);
  }, 1_200_000);
});
