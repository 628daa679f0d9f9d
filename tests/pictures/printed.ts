import { PDFiumLibrary } from '@hyzyla/pdfium';
import type { Page } from 'playwright-core';

/** Dots an inch. */
const PER_INCH = 109;
const POINTS_AN_INCH = 72;

/** Lays the first page of a PDF on the browser's page, as another reader of it draws it. */
export async function showPrinted(page: Page, pdf: Buffer): Promise<void> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(pdf);
  const { data, width, height } = await document.getPage(0).render({ scale: PER_INCH / POINTS_AN_INCH, render: 'bitmap' });
  document.destroy();
  library.destroy();
  await page.setContent('<body style="margin: 0"><canvas style="display: block"></canvas></body>');
  await page.evaluate(
    ({ text, width: wide, height: high }) => {
      const canvas = window.document.querySelector('canvas')!;
      Object.assign(canvas, { width: wide, height: high });
      canvas.getContext('2d')!.putImageData(new ImageData(Uint8ClampedArray.from(atob(text), (letter) => letter.charCodeAt(0)), wide, high), 0, 0);
    },
    { text: Buffer.from(data).toString('base64'), width, height },
  );
}
