import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { gone, isAlive } from './processes.ts';
import { Unstartable } from './unstartable.ts';

/** Stops a PostgreSQL that outlived the Bowline that started it. We hold the folder's lock, so nobody else needs it. */
export async function stopLeftover(cluster: string): Promise<void> {
  const note = join(cluster, 'postmaster.pid');
  if (!existsSync(note)) return;
  const [first, folder] = readFileSync(note, 'utf8').split('\n');
  const pid = Number(first);
  if (!Number.isInteger(pid) || pid <= 1 || !isAlive(pid)) return;
  if (!isPostgres(pid) || folder?.trim() !== cluster) {
    // Its number went to another program, and PostgreSQL would take that for itself. For a dead process the note must stay:
    // PostgreSQL finds in it whether a child of the dead one still writes.
    rmSync(note, { force: true });
    return;
  }
  for (const [signal, patience] of [['SIGINT', 8000], ['SIGQUIT', 4000]] as const) {
    process.kill(pid, signal);
    if (await gone(pid, patience)) return;
  }
  throw new Unstartable(`PostgreSQL from an earlier start (process ${pid}) does not stop. Stop it with: kill -QUIT ${pid}`);
}

function isPostgres(pid: number): boolean {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8').includes('postgres');
  } catch {
    return process.platform !== 'linux';
  }
}
