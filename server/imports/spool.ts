import { randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';

/** A file that came and waits for its turn, on disk: so many may wait without a place in memory. */
export interface Spooled {
  fileName: string;
  path: string;
}

export interface Spool {
  take(fileName: string, bytes: Readable): Promise<Spooled>;
  read(file: Spooled): Promise<Uint8Array>;
  drop(files: readonly Spooled[]): Promise<void>;
  /** Takes away everything that still waits. */
  close(): Promise<void>;
}

/** Keeps files in a folder of its own, made with the first. */
export function createSpool(): Spool {
  let folder: Promise<string> | undefined;
  return {
    async take(fileName, bytes) {
      folder ??= mkdtemp(join(tmpdir(), 'bowline-in-'));
      const path = join(await folder, randomUUID());
      try {
        await pipeline(bytes, createWriteStream(path));
      } catch (reason) {
        await rm(path, { force: true });
        throw reason;
      }
      return { fileName, path };
    },
    read: (file) => readFile(file.path),
    async drop(files) {
      for (const { path } of files) await rm(path, { force: true });
    },
    async close() {
      if (folder) await rm(await folder, { recursive: true, force: true });
    },
  };
}
