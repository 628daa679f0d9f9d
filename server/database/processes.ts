import { readFileSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';

/** One that has ended but was not yet fetched by its parent counts as gone. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return birthOf(pid) !== 'gone';
  } catch (reason) {
    return (reason as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/** Tells a process from a later one that got the same number; empty where the system does not say. */
export function birthOf(pid: number): string {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    const state = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return state[0] === 'Z' ? 'gone' : (state[19] ?? '');
  } catch {
    return '';
  }
}

/** Resolves to true when the process has gone, to false when it is still there after `ms`. */
export async function gone(pid: number, ms: number): Promise<boolean> {
  for (let waited = 0; waited < ms; waited += 50) {
    if (!isAlive(pid)) return true;
    await wait(50);
  }
  return !isAlive(pid);
}
