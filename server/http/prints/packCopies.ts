import { once } from 'node:events';
import type { Readable, Writable } from 'node:stream';
import yazl from 'yazl';
import { whole } from '../../store/inPieces.ts';
import type { Jobs } from '../../store/jobs.ts';
import { turnReport } from './turnReport.ts';
import type { Copy } from './waitedFor.ts';

/**
 * Copies as a zip that begins to flow with the first of them; the next is fetched when the one before has gone out. What cannot be printed stands in the zip
 * as a text that says why, and where pages are turned in a hurry in another.
 * `done` is called when the last is packed or nobody waits any more.
 */
export function packCopies(jobs: Jobs, copies: AsyncIterable<Copy>, suffix: string, done: () => void): Readable {
  const zip = new yazl.ZipFile();
  const output = zip.outputStream as Readable & Writable;
  const unprinted: string[] = [];
  const turns: string[] = [];
  const packAll = async () => {
    for await (const { name, made, files } of copies) {
      if (!made.ok) {
        unprinted.push(`${name}: ${made.trouble.text}`);
        continue;
      }
      turns.push(...turnReport(name, made));
      for (const [i, { id }] of files.entries()) {
        // Whole, since the reader of the zip counts files by the sizes that stand before them.
        zip.addBuffer(await whole(jobs.bytes(id)), `${name}${files.length > 1 ? ` - ${i + 1}` : ''}${suffix}`);
        if (output.writableNeedDrain) await once(output, 'drain');
      }
    }
    if (turns.length) zip.addBuffer(Buffer.from(`${turns.join('\n')}\n`), 'Page turns.txt');
    if (unprinted.length) zip.addBuffer(Buffer.from(`${unprinted.join('\n')}\n`), 'Not printed.txt');
    zip.end();
  };
  packAll()
    .catch((error: unknown) => output.destroy(error instanceof Error ? error : new Error(String(error))))
    .finally(done);
  return output;
}
