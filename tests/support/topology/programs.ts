import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Folders of a Debian machine that are not on everybody's path. */
const ALSO = ['/usr/sbin', '/usr/bin', '/usr/local/sbin', '/usr/local/bin'];

/** Where a program of the machine lies; null where it is not installed. */
export function findProgram(name: string): string | null {
  const folders = [...(process.env.PATH ?? '').split(delimiter), ...ALSO];
  return folders.map((folder) => join(folder, name)).find(runs) ?? null;
}

function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** True where this machine lacks one of them, so that what needs it is passed over, visibly; with BOWLINE_TOPOLOGY=must a lack is a failure. */
export function lacks(...names: ('redis-server' | 'haproxy')[]): boolean {
  const missing = names.filter((name) => findProgram(name) === null);
  if (missing.length && process.env.BOWLINE_TOPOLOGY === 'must') throw new Error(`Not installed: ${missing.join(', ')}. On Debian: apt-get install ${missing.join(' ')}`);
  return missing.length > 0;
}

export function program(name: string): string {
  const found = findProgram(name);
  if (!found) throw new Error(`${name} is not installed. On Debian: apt-get install ${name}`);
  return found;
}
