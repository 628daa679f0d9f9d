/**
 * Keeps what a version of Bowline writes, so that every later one is tried on it:
 *
 *     npm run -s keep:state -- NAME [FOLDER]
 *
 * NAME is what the state is called (the last change of the database in it, like "hand"); FOLDER is where the program lies, this one where it is left out (for an
 * older one: `git worktree add`, `npm ci`, `npm run -s generate` there). The program is started as it is with its demo, a season is played on it, it is asked
 * everything, and two files are left beside this one in states/: all rows in the form of a backup, and what it answered.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { backupLines } from '../../../../server/database/backup/take.ts';
import { reachDatabase } from '../../../../server/database/reach.ts';
import { freePort } from '../../../support/serverProcess.ts';
import { askAll, type Role } from './askings.ts';
import { comeIn } from './guest.ts';
import { playSeason, type Cast } from './season.ts';
import { keepState } from './states.ts';

const [name, folder = '.'] = process.argv.slice(2);
if (!name || !/^[a-z_]+$/.test(name) || !existsSync(join(folder, 'server/main.ts'))) {
  console.error('npm run -s keep:state -- NAME [FOLDER of the program]');
  process.exit(2);
}

const data = mkdtempSync(join(tmpdir(), 'bowline-state-'));
const port = await freePort();
const child = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts', '--demo'], { cwd: resolve(folder), env: { ...process.env, PORT: String(port), BOWLINE_DATA: data }, stdio: ['ignore', 'pipe', 'inherit'] });
const ended = new Promise((done) => child.once('close', done));
const links = new Map<string, string>();
for await (const line of createInterface({ input: child.stdout })) {
  console.log(line);
  const [, role, link] = /^Sign in as (\w+) .*(http\S+)$/.exec(line) ?? [];
  if (role && link) links.set(role, link);
  if (line.endsWith('Ctrl-C stops Bowline.')) break;
}
child.stdout.resume();

try {
  const address = `http://127.0.0.1:${port}`;
  const enter = (role: Role) => comeIn(address, links.get(role)!);
  const cast: Cast = { librarian: await enter('librarian'), principal: await enter('principal'), player: await enter('player') };
  const left = await playSeason(address, cast);
  const at = new Date().toISOString();
  const askings = await askAll((as, path) => cast[as].ask(path));
  const cookies = { librarian: cast.librarian.cookie(), principal: cast.principal.cookie(), player: cast.player.cookie() };
  child.kill('SIGINT');
  await ended;
  const reached = await reachDatabase({ databaseUrl: null, data }, 'read');
  const lines: string[] = [];
  for await (const line of backupLines(reached.owner, new Date(at))) lines.push(line);
  await reached.close();
  keepState(name, lines, { at, cookies, ...left, askings });
  console.log(`Kept ${name}: ${askings.length} answers.`);
} finally {
  child.kill('SIGKILL');
  rmSync(data, { recursive: true, force: true });
}
