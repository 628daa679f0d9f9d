import { engravingDocument } from '../../core/musicxml/engravingDocument.ts';
import { createRequire } from 'node:module';
import type { Verovio } from 'verovio/esm';
import { APPEARANCE } from '../../core/engraving/appearance.ts';
import { openFile } from '../../server/files/openFile.ts';
import { printPart } from '../../server/print/printPart.ts';
import { CORPUS, corpusPath } from '../support/corpus.ts';
import { demoFile } from '../support/demoFile.ts';
import { fileOrder } from '../support/printOrders.ts';

/** Processor seconds, since other work may share the machine. */
const seconds = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

/** What the engraver alone takes: the part on A4 pages with a staff of 7.5 mm, drawn page by page. */
async function engraverAlone(order: Awaited<ReturnType<typeof fileOrder>>): Promise<{ seconds: number; pages: number }> {
  const file = await openFile(order.bytes, order.fileName);
  const made = file.ok ? engravingDocument(file.text, order.part, order.stored) : null;
  if (!made?.ok) throw new Error('The part cannot be read.');
  // The print before this has opened it; imported, it would cost the memory that is measured here.
  const toolkit = new (createRequire(import.meta.url)('verovio') as Verovio).toolkit();
  toolkit.setOptions({ ...APPEARANCE, pageWidth: 1786, pageHeight: 2630, breaks: 'auto' });
  const from = seconds();
  toolkit.loadData(made.text);
  const pages = toolkit.getPageCount();
  for (let page = 1; page <= pages; page += 1) toolkit.renderToSVG(page);
  return { seconds: seconds() - from, pages };
}

const PARTS: [file: string, part: string | number][] = [[demoFile(), 'P1'], [demoFile(), 'P4']];
if (CORPUS) {
  for (const [name, place] of [['openscore-orchestra/Haydn_104_1.mxl', 0], ['openscore-orchestra/Schubert_D.485_1.mxl', 2], ['openscore-orchestra/Beethoven_Op.67_2.mxl', 3]] as const) PARTS.push([corpusPath(name), place]);
}

let most = 0;
const watching = setInterval(() => (most = Math.max(most, process.memoryUsage().rss)), 20);
const ratios: number[] = [];
// The first print of a process opens faces and the engraver.
await printPart(await fileOrder(demoFile(), 'P2', 1));
for (const [file, part] of PARTS) {
  const order = await fileOrder(file, part, 5);
  const alone = await engraverAlone(order);
  const from = seconds();
  const printed = await printPart(order);
  const took = seconds() - from;
  if (!printed.ok) throw new Error(printed.trouble.text);
  const ratio = took / printed.pages / (alone.seconds / alone.pages);
  ratios.push(ratio);
  console.log(`${order.stored.name}, ${order.stored.measures.length} measures: ${printed.pages} pages, ${(took / printed.pages).toFixed(2)} s a page; engraver alone ${alone.pages} pages, ${(alone.seconds / alone.pages).toFixed(2)} s a page; ratio ${ratio.toFixed(1)}; ${(printed.files[0]!.bytes.length / printed.pages / 1024).toFixed(0)} KiB a page`);
}
clearInterval(watching);
console.log(`time a page to the engraver alone: ${Math.min(...ratios).toFixed(1)} to ${Math.max(...ratios).toFixed(1)}; most memory ${(most / 1e6).toFixed(0)} MB`);
