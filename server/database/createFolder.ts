import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { BOOTSTRAP } from './connection.ts';
import { own, under, type RunAs } from './runAs.ts';
import { Unstartable } from './unstartable.ts';

/** Major version of the programs that come with `npm ci`. */
const VERSION = '18';

/** Makes PostgreSQL's folder where there is none. Built beside and moved into place, so that an interrupted start leaves no half. */
export async function createFolder(runAs: RunAs, initdb: string, data: string): Promise<void> {
  if (existsSync(data)) {
    const found = readFileSync(join(data, 'PG_VERSION'), 'utf8').trim();
    if (found !== VERSION) throw new Unstartable(`The data folder ${data} was written by PostgreSQL ${found}; this Bowline brings ${VERSION}. Choose another folder with BOWLINE_DATA, or move the data with pg_upgrade.`);
    own(data, runAs.owner);
    return;
  }
  const draft = `${data}.new`;
  rmSync(draft, { recursive: true, force: true });
  mkdirSync(draft, { mode: 0o700 });
  own(draft, runAs.owner);
  await run(runAs, initdb, ['-D', draft, '-U', BOOTSTRAP, '-A', 'trust', '-E', 'UTF8', '--locale-provider=builtin', '--builtin-locale=C.UTF-8', '--locale=C', '--no-instructions']);
  renameSync(draft, data);
}

function run(runAs: RunAs, program: string, options: string[]): Promise<void> {
  const { command, args } = under(runAs, program, options);
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { ...runAs.ids, detached: true, stdio: ['ignore', 'pipe', 'pipe'], cwd: '/' });
    let said = '';
    child.stdout.on('data', (chunk: Buffer) => (said += chunk.toString()));
    child.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
    child.once('error', (reason) => reject(new Unstartable(`PostgreSQL's initdb does not run: ${reason.message}`)));
    child.once('close', (code) => (code === 0 ? resolve() : reject(new Unstartable(`PostgreSQL's initdb ended with ${code}: ${said.trim().split('\n').at(-1) ?? ''}`))));
  });
}
