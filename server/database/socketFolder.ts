import { createHash } from 'node:crypto';
import { lstatSync, mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { own, type RunAs } from './runAs.ts';
import { Unstartable } from './unstartable.ts';

/** PostgreSQL names its socket by a port, though none is opened. */
export const SOCKET_PORT = 5432;

// A Unix socket's path holds 107 bytes at most; PostgreSQL adds "/.s.PGSQL.5432.lock" to the folder.
const LONGEST = 107 - '/.s.PGSQL.5432.lock'.length;

/** A folder that only we can enter, short enough for a socket: beside the data, else in the temporary folder. */
export function socketFolder(data: string, owner: RunAs['owner']): string {
  const beside = join(data, 'socket');
  const folder = Buffer.byteLength(beside) <= LONGEST ? beside : join(tmpdir(), `bowline-${createHash('sha256').update(data).digest('hex').slice(0, 12)}`);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const found = lstatSync(folder);
  // Beside the data nobody else could have put it; another face of ours may have.
  const mine = folder === beside || found.uid === process.getuid?.() || found.uid === owner.uid;
  if (!found.isDirectory() || !mine || (found.mode & 0o077) !== 0) throw new Unstartable(`The folder ${folder} belongs to someone else. Remove it, or set BOWLINE_DATA to another folder.`);
  own(folder, owner);
  return folder;
}
