import { describe, expect, it } from 'vitest';
import { marginsOf, MarginsName } from '../../../core/print/margins.ts';
import { paperNamed } from '../../../core/print/paper.ts';
import { printPart } from '../../../server/print/printPart.ts';
import { demoFile } from '../../support/demoFile.ts';
import { frameOf, readPdf } from '../../support/pdfDrawing.ts';
import { fileOrder } from '../../support/printOrders.ts';
import { staffEdges } from '../../support/printedSigns.ts';

const TITLE = 'A Title That Is a Good Deal Too Long for One Line of Any Sheet, and Goes On: Andante, Allegro';

describe.each(MarginsName.options)('margins that are %s, measured from the PDF', (margins) => {
  it('are clear on every page, whatever the title; the staves reach from one to the other', async () => {
    const order = await fileOrder(demoFile(), 'P5', 3, { margins });
    const printed = await printPart({ ...order, heading: { ...order.heading, title: TITLE } });
    if (!printed.ok) throw new Error(printed.trouble.text);
    const pages = await readPdf(printed.files[0]!.bytes);
    const { width, height } = paperNamed(order.paper);
    const { inner, outer, top, bottom } = marginsOf(order.paper, margins);
    pages.forEach((page, i) => {
      const [left, right] = i % 2 ? [outer, inner] : [inner, outer];
      const frames = [...page.paths.map(frameOf), ...page.texts.map(({ x, y, width: wide, size }) => ({ x0: x, x1: x + wide, y0: y - 0.7 * size, y1: y }))];
      if (page.paths.length) {
        expect(Math.abs(staffEdges(page).left - left)).toBeLessThan(0.1);
        expect(Math.abs(staffEdges(page).right - (width - right))).toBeLessThan(0.1);
      }
      // A stroke of a slur that goes on, and the pen's own width.
      expect(Math.min(...frames.map(({ x0 }) => x0))).toBeGreaterThan(left - 0.3);
      expect(Math.max(...frames.map(({ x1 }) => x1))).toBeLessThan(width - right + 0.3);
      expect(Math.min(...frames.map(({ y0 }) => y0))).toBeGreaterThan(top - 0.3);
      // The edition stands under the music, in the margin.
      expect(Math.max(...frames.map(({ y1 }) => y1))).toBeLessThan(height - bottom + 4.3);
    });
    expect(pages.map(({ words }) => words.replace(/\s+/g, ' ')).join(' ')).toContain('Good Deal Too Long for One Line');
  }, 240_000);
});
