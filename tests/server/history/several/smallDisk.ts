import { execFileSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';

/** A disk of its own for the database, small enough to be filled; null where this process may not make one. Asked for in megabytes. */
export function smallDisk(folder: string, megabytes: number): { path: string; leave(): void } | null {
  mkdirSync(folder, { recursive: true });
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m,mode=0755`, 'tmpfs', folder], { stdio: 'ignore' });
  } catch {
    return null;
  }
  return { path: folder, leave: () => void execFileSync('umount', ['-l', folder], { stdio: 'ignore' }) };
}
