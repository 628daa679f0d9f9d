import { createReadStream, createWriteStream } from 'node:fs';
import { rename, rm } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { pipeline as run, Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { StringDecoder } from 'node:string_decoder';
import { createGunzip, createGzip } from 'node:zlib';
import { BackupRefused } from './format.ts';

/** Writes lines to a file, packed; all of it or nothing. For its owner's eyes alone: it holds everybody's letters and sign-ins. */
export async function writeBackup(path: string, lines: AsyncIterable<string>): Promise<void> {
  const draft = resolve(dirname(path), `.bowline-${process.pid}.backup`);
  try {
    await pipeline(Readable.from(lines), createGzip(), createWriteStream(draft, { mode: 0o600, flush: true }));
    await rename(draft, path);
  } catch (reason) {
    await rm(draft, { force: true });
    const { code, syscall } = reason as NodeJS.ErrnoException;
    if (code === 'ENOSPC') throw new BackupRefused(`${path}: There is no room for the backup there, and nothing was kept of it. Make room, or choose another place.`);
    if (syscall === 'open' || syscall === 'write' || syscall === 'rename') throw new BackupRefused(`${path}: The backup cannot be written (${code}). Choose another place.`);
    throw reason;
  }
}

/** The lines of a packed file, without their ends. Throws BackupRefused where it cannot be read or is damaged. */
export async function* readBackup(path: string): AsyncGenerator<string> {
  const unpacked = createGunzip();
  run(createReadStream(path), unpacked, () => undefined);
  try {
    yield* linesOf(unpacked);
  } catch (reason) {
    const { code, syscall } = reason as NodeJS.ErrnoException;
    if (syscall) throw new BackupRefused(`${path}: The file cannot be read (${code}).`);
    throw new BackupRefused(`${path}: This is no backup of Bowline, or it is damaged. Nothing was put back.`);
  }
}

/** Split at line feeds alone: what people wrote may hold other signs that end a line. */
async function* linesOf(bytes: AsyncIterable<Buffer>): AsyncGenerator<string> {
  const decoder = new StringDecoder('utf8');
  let begun: string[] = [];
  for await (const chunk of bytes) {
    const pieces = decoder.write(chunk).split('\n');
    begun.push(pieces[0]!);
    for (const piece of pieces.slice(1)) {
      yield begun.join('');
      begun = [piece];
    }
  }
  const rest = begun.join('') + decoder.end();
  if (rest) yield rest;
}
