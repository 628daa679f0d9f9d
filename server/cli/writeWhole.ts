import { rename, rm, writeFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { BadInput } from './command.ts';

/** All of the file or none of it. */
export async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  const draft = resolve(dirname(path), `.bowline-${process.pid}.part`);
  try {
    await writeFile(draft, bytes);
    await rename(draft, path);
  } catch (error) {
    await rm(draft, { force: true });
    throw new BadInput(`${path}: The file cannot be written (${(error as NodeJS.ErrnoException).code}). Choose another place.`);
  }
}
