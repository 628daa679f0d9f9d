import { spawnSync } from 'node:child_process';
import { chownSync, lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Unstartable } from './unstartable.ts';

/** How PostgreSQL is run. It refuses to run as root, so root lends it another face. */
export interface RunAs {
  command: string;
  args: string[];
  uid?: number;
  gid?: number;
  /** Who must own its folders. */
  owner: { uid: number; gid: number };
}

const NAMESPACE = ['--user', '--map-user=1000', '--map-group=1000'];

/** An ordinary person runs it directly; root in a user namespace; where that is refused, as `nobody`. */
export function chooseRunAs(program: string): RunAs {
  const uid = process.getuid?.() ?? 0;
  const gid = process.getgid?.() ?? 0;
  if (uid !== 0 || process.platform === 'win32') return { command: program, args: [], owner: { uid, gid } };
  if (works({ command: 'unshare', args: [...NAMESPACE, program], owner: { uid, gid } })) return { command: 'unshare', args: [...NAMESPACE, program], owner: { uid, gid } };
  const nobody = idsOfNobody();
  const asNobody: RunAs = { command: program, args: [], ...nobody, owner: nobody };
  if (works(asNobody)) return asNobody;
  throw new Unstartable('PostgreSQL does not run as root, and this machine allows neither a user namespace nor running it as nobody. Start Bowline as an ordinary person, or set DATABASE_URL.');
}

function works({ command, args, uid, gid }: RunAs): boolean {
  const ids = uid === undefined || gid === undefined ? {} : { uid, gid };
  return spawnSync(command, [...args, '--version'], { ...ids, stdio: 'ignore', timeout: 10_000, cwd: '/' }).status === 0;
}

function idsOfNobody(): { uid: number; gid: number } {
  const line = readFileSync('/etc/passwd', 'utf8').split('\n').find((row) => row.startsWith('nobody:'))?.split(':');
  return { uid: Number(line?.[2] ?? 65534), gid: Number(line?.[3] ?? 65534) };
}

/** Hands a folder over when an earlier start ran PostgreSQL under another face. */
export function own(path: string, owner: RunAs['owner']): void {
  const found = lstatSync(path);
  if (found.uid === owner.uid || process.getuid?.() !== 0) return;
  chownSync(path, owner.uid, owner.gid);
  if (found.isDirectory()) for (const name of readdirSync(path)) own(join(path, name), owner);
}
