import { beforeAll, describe, expect, it } from 'vitest';
import { glyphsOf } from '../../../core/engraving/marks/glyphOf.ts';
import type { PrintOrder, Printed } from '../../../server/print/order.ts';
import { isInTheMusic } from '../../../server/print/markedText.ts';
import { printPart } from '../../../server/print/printPart.ts';
import { type DrawnPage, readPdf } from '../../support/pdfDrawing.ts';
import { collisions } from '../../support/printCollisions.ts';
import { demoOrder, fileOrder } from '../../support/printOrders.ts';
import { signsOn, staffHeights } from '../../support/printedSigns.ts';
import { demoFile } from '../../support/demoFile.ts';

const PARTS = ['Violin I', 'Violin II', 'Viola', 'Violoncello', 'Double bass'];

/** How many of each sign the marks of an order ask for. */
function wanted({ marks }: PrintOrder): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const mark of marks.filter((one) => !isInTheMusic(one))) for (const { stroke } of glyphsOf(mark.value)) counts[stroke ?? 'words'] = (counts[stroke ?? 'words'] ?? 0) + 1;
  return counts;
}

async function drawnSigns(pages: readonly DrawnPage[]): Promise<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const page of pages) for (const { stroke } of (await signsOn(page)).signs) counts[stroke] = (counts[stroke] ?? 0) + 1;
  return counts;
}

async function print(order: PrintOrder): Promise<Printed> {
  const printed = await printPart(order);
  if (!printed.ok) throw new Error(printed.trouble.text);
  return printed;
}

describe.each([
  ...PARTS.map((name) => [`${name}, desk 1, as agreed`, () => demoOrder(name, '1')] as const),
  ...PARTS.map((name, i) => [`${name}, written full of marks`, () => fileOrder(demoFile(), `P${i + 1}`, 7 + i)] as const),
])('the demo printed: %s', (_, orderOf) => {
  let order: PrintOrder;
  let printed: Printed;
  let pages: DrawnPage[];
  beforeAll(async () => {
    order = await orderOf();
    printed = await print(order);
    pages = await readPdf(printed.files[0]!.bytes);
  }, 240_000);

  it('every staff is 7.5 mm high', () => {
    const heights = pages.flatMap(staffHeights);
    expect(heights.length).toBeGreaterThan(20);
    for (const height of heights) expect(Math.abs(height - 7.5)).toBeLessThan(0.05);
  });

  it('every sign of the marks is drawn, and no other', async () => expect(await drawnSigns(pages)).toEqual(wanted(order)));

  it('no sign touches another, a note or a word', async () => {
    const found = await Promise.all(pages.map(collisions));
    expect(found.flat()).toEqual([]);
  });

  it('title, instrument, tempo and letters are found by a search; instrument and page number stand on every page', () => {
    const words = pages.map((page) => page.words);
    expect(words[0]).toContain(order.heading.title);
    expect(words.join('\n')).toContain('Andante sostenuto');
    expect(words.join('\n')).toContain('Poco più mosso');
    for (const text of words) expect(text).toContain(order.heading.instrument);
  });

  it('nothing leaves the sheet, and page numbers stand at its outer edge', () => {
    pages.forEach(({ paths, texts, width, height }, i) => {
      // The page with the title alone has no number.
      if (!paths.length) return;
      const xs = [...paths.flatMap(({ points }) => points.map(([x]) => x)), ...texts.flatMap((text) => [text.x, text.x + text.width])];
      const ys = [...paths.flatMap(({ points }) => points.map(([, y]) => y)), ...texts.map(({ y }) => y)];
      expect(Math.min(...xs)).toBeGreaterThan(3);
      expect(Math.max(...xs)).toBeLessThan(width - 3);
      expect(Math.min(...ys)).toBeGreaterThan(3);
      expect(Math.max(...ys)).toBeLessThan(height - 3);
      const number = texts.find(({ text, y, face }) => text === String(i + 1) && y < 16 && face.endsWith('Besley-Medium'));
      expect((number!.x > width / 2)).toBe(i % 2 === 0);
    });
  });

  it('turns are after odd pages with music, and each says how long the rest is', () => {
    expect(printed.pages).toBe(pages.length);
    expect(printed.turns.map(({ page }) => page)).toEqual(pages.flatMap(({ paths }, i) => (i % 2 === 0 && i + 1 < pages.length && paths.length ? [i + 1] : [])));
    for (const { seconds, kind } of printed.turns) expect(kind).toBe(seconds >= 2 ? 'good' : seconds >= 0.75 ? 'hurried' : 'none');
  });
});
