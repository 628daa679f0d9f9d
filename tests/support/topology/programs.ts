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

/** What the whole topology needs and this machine lacks; with it, how to get it. */
export const missingPrograms = (): string[] => ['redis-server', 'haproxy'].filter((name) => findProgram(name) === null);

export function program(name: string): string {
  const found = findProgram(name);
  if (!found) throw new Error(`${name} is not installed. On Debian: apt-get install ${name}`);
  return found;
}
