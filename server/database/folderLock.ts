import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { birthOf, isAlive } from './processes.ts';
import { Unstartable } from './unstartable.ts';

/** Takes a data folder for this process. A note left by a process that is no longer there does not count. */
export function lockFolder(folder: string): () => void {
  const path = join(folder, 'bowline.pid');
  const note = JSON.stringify({ pid: process.pid, birth: birthOf(process.pid) });
  for (;;) {
    try {
      writeFileSync(path, note, { flag: 'wx' });
      return () => rmSync(path, { force: true });
    } catch (reason) {
      if ((reason as NodeJS.ErrnoException).code !== 'EEXIST') throw new Unstartable(`The data folder ${folder} cannot be written (${(reason as NodeJS.ErrnoException).code}). Choose another with BOWLINE_DATA.`);
    }
    const holder = livingHolder(path);
    if (holder) {
      throw new Unstartable(`The data folder ${folder} is in use by process ${holder.pid}. Stop that Bowline first, or choose another folder with BOWLINE_DATA.`);
    }
    rmSync(path, { force: true });
  }
}

/** True when another Bowline runs on the folder. */
export const holds = (folder: string): boolean => livingHolder(join(folder, 'bowline.pid')) !== null;

function livingHolder(path: string): { pid: number } | null {
  const holder = holderOf(path);
  return holder && isAlive(holder.pid) && birthOf(holder.pid) === holder.birth && holder.pid !== process.pid ? holder : null;
}

function holderOf(path: string): { pid: number; birth: string } | null {
  try {
    return JSON.parse(readFileSync(path, 'utf8')) as { pid: number; birth: string };
  } catch {
    return null;
  }
}
