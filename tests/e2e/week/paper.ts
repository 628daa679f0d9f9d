import { readFileSync } from 'node:fs';
import { buffer } from 'node:stream/consumers';
import { fromBuffer, type Entry } from 'yauzl';
import type { Download } from 'playwright-core';
import { type DrawnPage, readPdf } from '../../support/pdfDrawing.ts';
import { signsOn } from '../../support/printedSigns.ts';

/** The files of a zip that was downloaded, by name. */
export function unzipped(download: string): Promise<Map<string, Buffer>> {
  return new Promise((resolve, reject) => {
    fromBuffer(readFileSync(download), { lazyEntries: true }, (fault, zip) => {
      if (fault) return reject(fault);
      const files = new Map<string, Buffer>();
      zip.on('error', reject);
      zip.on('end', () => resolve(files));
      zip.on('entry', (entry: Entry) =>
        zip.openReadStream(entry, (broken, stream) => {
          if (broken) return reject(broken);
          void buffer(stream).then((bytes) => {
            files.set(entry.fileName, bytes);
            zip.readEntry();
          }, reject);
        }),
      );
      zip.readEntry();
    });
  });
}

/** The copies in a zip of PDFs, by name without the ending. */
export async function copiesIn(download: Download): Promise<Map<string, DrawnPage[]>> {
  const files = await unzipped(await download.path());
  const copies = new Map<string, DrawnPage[]>();
  for (const [name, bytes] of files) if (name.endsWith('.pdf')) copies.set(name.slice(0, -4), await readPdf(bytes));
  return copies;
}

/** The signs of ours on all pages of a copy, sorted; of words, what they say. */
export async function signsOnCopy(pages: readonly DrawnPage[]): Promise<string[]> {
  return (await Promise.all(pages.map(signsOn))).flatMap(({ signs }) => signs.map(({ stroke }) => stroke as string)).sort();
}
