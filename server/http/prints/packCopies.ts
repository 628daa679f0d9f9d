import type { Readable } from 'node:stream';
import yazl from 'yazl';
import type { Made } from './forms.ts';
import { turnReport } from './turnReport.ts';

/** One copy to be made, and what its file is called without its ending. */
export interface Copy {
  name: string;
  make(): Promise<Made>;
}

/**
 * Copies as a zip that begins to flow with the first of them; one is made at a time. What cannot be printed stands in the zip as a text that says why,
 * and where pages are turned in a hurry in another.
 * `done` is called when the last is made or nobody waits any more.
 */
export function packCopies(copies: readonly Copy[], suffix: string, signal: AbortSignal, done: () => void): Readable {
  const zip = new yazl.ZipFile();
  const output = zip.outputStream as Readable;
  const unprinted: string[] = [];
  const turns: string[] = [];
  const makeAll = async () => {
    for (const { name, make } of copies) {
      signal.throwIfAborted();
      const made = await make();
      if (!made.ok) {
        unprinted.push(`${name}: ${made.trouble.text}`);
        continue;
      }
      turns.push(...turnReport(name, made));
      for (const [i, { bytes }] of made.files.entries()) zip.addBuffer(Buffer.from(bytes), `${name}${made.files.length > 1 ? ` - ${i + 1}` : ''}${suffix}`);
    }
    if (turns.length) zip.addBuffer(Buffer.from(`${turns.join('\n')}\n`), 'Page turns.txt');
    if (unprinted.length) zip.addBuffer(Buffer.from(`${unprinted.join('\n')}\n`), 'Not printed.txt');
    zip.end();
  };
  makeAll()
    .catch((error: unknown) => output.destroy(error instanceof Error ? error : new Error(String(error))))
    .finally(done);
  return output;
}
