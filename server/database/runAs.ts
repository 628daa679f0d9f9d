import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Unstartable } from './unstartable.ts';

/** How PostgreSQL's programs are run. They refuse to run as root, so root lends them another face. */
export interface RunAs {
  /** Command line that runs a program under that face. */
  before: string[];
  ids: { uid?: number; gid?: number };
  /** Who must own its folders. */
  owner: { uid: number; gid: number };
}

const NAMESPACE = ['unshare', '--user', '--map-user=1000', '--map-group=1000'];
const ATTEMPTS = 3;

/** An ordinary person runs them directly; root in a user namespace; where that is refused, as `nobody`. One face for all of a start. */
export function chooseRunAs(program: string): RunAs {
  const own = { uid: process.getuid?.() ?? 0, gid: process.getgid?.() ?? 0 };
  if (own.uid !== 0 || process.platform === 'win32') return { before: [], ids: {}, owner: own };
  const inNamespace: RunAs = { before: NAMESPACE, ids: {}, owner: own };
  // Asked more than once: falling back because of one hiccup would leave the folder to another owner.
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) if (works(inNamespace, program)) return inNamespace;
  const nobody = idsOfNobody();
  const asNobody: RunAs = { before: [], ids: nobody, owner: nobody };
  if (works(asNobody, program)) return asNobody;
  throw new Unstartable('PostgreSQL does not run as root, and this machine allows neither a user namespace nor running it as nobody. Start Bowline as an ordinary person, or set DATABASE_URL.');
}

/** The command line of a program under a face. */
export function under({ before }: RunAs, program: string, args: string[]): { command: string; args: string[] } {
  const [command = program, ...rest] = [...before, program];
  return { command, args: [...rest, ...args] };
}

function works(runAs: RunAs, program: string): boolean {
  const { command, args } = under(runAs, program, ['--version']);
  return spawnSync(command, args, { ...runAs.ids, stdio: 'ignore', timeout: 30_000, cwd: '/' }).status === 0;
}

function idsOfNobody(): { uid: number; gid: number } {
  const line = readFileSync('/etc/passwd', 'utf8').split('\n').find((row) => row.startsWith('nobody:'))?.split(':');
  return { uid: Number(line?.[2] ?? 65534), gid: Number(line?.[3] ?? 65534) };
}

/** Lets the one PostgreSQL runs as pass through our data folder; says so where a folder above it is closed to them. */
export function letThrough(folder: string, { ids }: RunAs): void {
  if (ids.uid === undefined) return;
  chmodSync(folder, 0o711);
  const passes = spawnSync('test', ['-x', folder], { ...ids, stdio: 'ignore', cwd: '/' }).status === 0;
  if (!passes) throw new Unstartable(`PostgreSQL runs as nobody on this machine, who may not enter ${folder}. Set BOWLINE_DATA to a folder whose parents everyone may enter, like /var/lib/bowline.`);
}

/** Hands a folder over when an earlier start ran PostgreSQL under another face. */
export function own(path: string, owner: RunAs['owner']): void {
  const found = lstatSync(path);
  if (found.uid === owner.uid || process.getuid?.() !== 0) return;
  chownSync(path, owner.uid, owner.gid);
  if (found.isDirectory()) for (const name of readdirSync(path)) own(join(path, name), owner);
}
