import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PartView, Shelf } from '../../../core/agreement/wire/http.ts';
import { caller, signIn, wholeLog } from '../history/library.ts';
import { freePort, startServer, type ServerProcess } from '../../support/serverProcess.ts';

const root = join(import.meta.dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'bowline-backup-cli-'));
const [data, other, file] = [join(folder, 'data'), join(folder, 'other'), join(folder, 'whole.bowline')];
const PATIENT = { timeout: 240_000 };

function bowline(at: string, ...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const { DATABASE_URL: _own, ...env } = process.env;
  return new Promise((resolve) => {
    execFile(process.execPath, ['server/cli/bowline.mjs', ...args], { cwd: root, env: { ...env, BOWLINE_DATA: at } }, (error, out, err) => resolve({ code: error ? Number(error.code) : 0, out, err }));
  });
}

async function open(at: string, flags: string[] = []): Promise<{ server: ServerProcess; address: string; cookie: string }> {
  const port = await freePort();
  const server = await startServer({ PORT: String(port), HOST: '127.0.0.1', BOWLINE_DATA: at }, flags);
  const address = `http://127.0.0.1:${port}`;
  // On a busy machine a server that has only just begun may still have its hands full.
  await caller(address, '')('GET', '/api/health');
  return { server, address, cookie: (await signIn(address, server.link('librarian'))).cookie };
}

/** What a library holds, as its own librarian reads it: every part with its whole log and its state. */
async function told({ address, cookie }: { address: string; cookie: string }) {
  const call = caller(address, cookie);
  const { programmes, sections } = await call<Shelf>('GET', '/api/shelf');
  const parts = programmes.flatMap(({ works }) => works.flatMap((work) => work.parts.map(({ id }) => id)));
  const read = async (id: string) => {
    const { seen: _mine, ...view } = await call<PartView>('GET', `/api/parts/${id}`);
    return { view, log: await wholeLog(address, cookie, id) };
  };
  return { programmes, sections, parts: await Promise.all(parts.map(read)) };
}

describe('bowline backup and bowline restore', PATIENT, () => {
  let first: Awaited<ReturnType<typeof open>>;
  let second: Awaited<ReturnType<typeof open>> | undefined;
  beforeAll(async () => void (first = await open(data, ['--demo'])), PATIENT.timeout);
  afterAll(async () => {
    for (const house of [first, second]) {
      house?.server.kill('SIGTERM');
      await house?.server.ended;
    }
    rmSync(folder, { recursive: true, force: true });
  }, PATIENT.timeout);

  it('takes a whole library along while it runs, and a second one goes on where the first was', async () => {
    const taken = await bowline(data, 'backup', file);
    expect(taken).toMatchObject({ code: 0, err: '' });
    const { rows } = JSON.parse(taken.out) as { rows: number };
    const put = await bowline(other, 'restore', file);
    expect(put).toMatchObject({ code: 0, err: '' });
    expect(JSON.parse(put.out)).toEqual({ rows });
    const before = await told(first);
    second = await open(other);
    const after = await told(second);
    expect(before.parts.reduce((sum, { log }) => sum + log.length, 0)).toBeGreaterThan(50);
    expect(after).toEqual(before);
  });

  it('says what stands in the way: a library in use, one that holds something, and none at all', async () => {
    expect(await bowline(data, 'restore', file)).toMatchObject({ code: 2, err: expect.stringContaining('is in use by process') });
    const nowhere = join(folder, 'nowhere');
    expect(await bowline(nowhere, 'backup', file)).toMatchObject({ code: 2, err: expect.stringContaining('There is no Bowline in the data folder') });
    expect(existsSync(nowhere)).toBe(false);
    second?.server.kill('SIGTERM');
    await second?.server.ended;
    second = undefined;
    expect(await bowline(other, 'restore', file)).toMatchObject({ code: 2, err: expect.stringContaining('There is something in this library already') });
  });
});
