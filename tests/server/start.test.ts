import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isAlive } from '../../server/database/processes.ts';
import { createTestDatabase } from '../support/database.ts';
import { freePort, launch, postgresOf, startServer, type ServerProcess } from '../support/serverProcess.ts';

const folder = mkdtempSync(join(tmpdir(), 'bowline-start-'));
const data = join(folder, 'data');
let port: number;
let server: ServerProcess;
beforeAll(async () => {
  port = await freePort();
  server = await startServer({ PORT: String(port), BOWLINE_DATA: data });
});
afterAll(async () => {
  server.kill('SIGKILL');
  await server.ended;
  rmSync(folder, { recursive: true, force: true });
});

const until = async (holds: () => boolean) => {
  while (!holds()) await wait(20);
};

describe('npm start', () => {
  it('prints the address, and a link that signs the librarian in', async () => {
    expect(server.lines).toContain(`Bowline is at http://127.0.0.1:${port}`);
    const token = new URL(server.link('librarian')).searchParams.get('token');
    const reply = await fetch(`http://127.0.0.1:${port}/api/sign-in`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ token }) });
    expect(await reply.json()).toMatchObject({ name: 'Librarian', librarian: true });
  });

  it('a second one on the same folder says in one line whose it is, and leaves it alone', async () => {
    const second = launch({ PORT: String(await freePort()), BOWLINE_DATA: data }).server;
    expect(await second.ended).toBe(1);
    expect(second.lines).toEqual([`The data folder ${data} is in use by process ${server.pid}. Stop that Bowline first, or choose another folder with BOWLINE_DATA.`]);
    expect((await fetch(`http://127.0.0.1:${port}/api/health`)).status).toBe(200);
  });

  it('a taken port is one line, and nothing started is left behind', async () => {
    const taken = createServer().listen(0, '127.0.0.1');
    await until(() => taken.listening);
    const { port: busy } = taken.address() as { port: number };
    const other = join(folder, 'other');
    const second = launch({ PORT: String(busy), BOWLINE_DATA: other }).server;
    expect(await second.ended).toBe(1);
    expect(second.lines).toEqual([`Port ${busy} is taken by another program. Stop that one, or choose another port: PORT=${busy + 1} npm start`]);
    expect(existsSync(join(other, 'pg/postmaster.pid')) || existsSync(join(other, 'bowline.pid'))).toBe(false);
    taken.close();
  });

  it('on a database that servers share, a link is printed by the start that makes the librarian, and not again', async () => {
    const database = await createTestDatabase();
    const env = { DATABASE_URL: database.address, BOWLINE_DATA: join(folder, 'shared') };
    const links: string[] = [];
    for (let start = 0; start < 2; start += 1) {
      const one = await startServer({ ...env, PORT: String(await freePort()) });
      links.push(one.link('librarian'));
      one.kill('SIGTERM');
      await one.ended;
      expect(one.lines.join('\n').includes('npm run -s bowline -- link "Their Name"')).toBe(start === 1);
    }
    await database.drop();
    expect(links).toEqual([expect.stringContaining('/sign-in?token='), '']);
  });

  it('a bad setting is one line', async () => {
    const second = launch({ PORT: 'twelve' }).server;
    expect(await second.ended).toBe(1);
    expect(second.lines).toEqual(['The setting PORT=twelve cannot be used: it must be a port number.']);
  });

  it('stopped while it still starts, it leaves nothing running', async () => {
    const other = join(folder, 'early');
    const early = launch({ PORT: String(await freePort()), BOWLINE_DATA: other }).server;
    // The file is there before its number is written in it.
    await until(() => existsSync(join(other, 'pg/postmaster.pid')) && postgresOf(other) > 0);
    const postgres = postgresOf(other);
    early.kill('SIGINT');
    expect(await early.ended).toBe(0);
    expect(isAlive(postgres)).toBe(false);
    expect(existsSync(join(other, 'bowline.pid'))).toBe(false);
  });

  it('Ctrl-C, also pressed twice, stops everything it started', async () => {
    const postgres = postgresOf(data);
    server.kill('SIGINT');
    server.kill('SIGINT');
    expect(await server.ended).toBe(0);
    expect(isAlive(postgres)).toBe(false);
    expect(existsSync(join(data, 'bowline.pid'))).toBe(false);
  });
});
