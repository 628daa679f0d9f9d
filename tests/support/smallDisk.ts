import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A disk of its own with little room, as only root may lay one. */
export interface SmallDisk {
  folder: string;
  /** Takes all the room that is left. */
  fill(): void;
  makeRoom(): void;
  remove(): void;
}

const run = (command: string, ...args: string[]): boolean => spawnSync(command, args, { stdio: 'ignore' }).status === 0;

export function laySmallDisk(megabytes: number): SmallDisk {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-disk-'));
  if (!run('mount', '-t', 'tmpfs', '-o', `size=${megabytes}m,mode=0711`, 'tmpfs', folder)) {
    rmSync(folder, { recursive: true });
    throw new Error('No small disk can be laid here.');
  }
  const ballast = join(folder, 'ballast');
  return {
    folder,
    fill() {
      const file = openSync(ballast, 'a');
      try {
        for (const piece of [Buffer.alloc(1 << 20), Buffer.alloc(4096)]) while (writes(file, piece));
      } finally {
        closeSync(file);
      }
    },
    makeRoom: () => rmSync(ballast),
    remove() {
      run('umount', '-l', folder);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function writes(file: number, piece: Buffer): boolean {
  try {
    return writeSync(file, piece) === piece.length;
  } catch (reason) {
    if ((reason as NodeJS.ErrnoException).code === 'ENOSPC') return false;
    throw reason;
  }
}

/** Whether such a disk can be laid on this machine: by root, where no container forbids it. */
export function canLayDisks(): boolean {
  try {
    laySmallDisk(1).remove();
    return true;
  } catch {
    return false;
  }
}
