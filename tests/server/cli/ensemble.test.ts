import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Me } from '../../../core/agreement/wire/http.ts';
import { caller, signIn } from '../history/library.ts';
import { freePort, startServer, type ServerProcess } from '../../support/serverProcess.ts';

const PATIENT = { timeout: 240_000 };
const data = mkdtempSync(join(tmpdir(), 'bowline-ensembles-'));
let port: string;
let server: ServerProcess;

function bowline(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const { DATABASE_URL: _own, ...env } = process.env;
  return new Promise((resolve) => {
    execFile(process.execPath, ['server/cli/bowline.mjs', ...args], { cwd: join(import.meta.dirname, '../../..'), env: { ...env, PORT: port, BOWLINE_DATA: data } }, (error, out, err) => resolve({ code: error ? Number(error.code) : 0, out, err }));
  });
}

describe('bowline ensemble and bowline link, beside a running server', PATIENT, () => {
  beforeAll(async () => {
    port = String(await freePort());
    server = await startServer({ PORT: port, HOST: '127.0.0.1', BOWLINE_DATA: data });
  }, PATIENT.timeout);
  afterAll(async () => {
    server.kill('SIGTERM');
    await server.ended;
    rmSync(data, { recursive: true, force: true });
  }, PATIENT.timeout);

  it('an ensemble comes with its librarian, who comes in by the link that was printed and finds it empty and theirs', async () => {
    const added = await bowline('ensemble', 'add', 'North Quay Players', '--librarian', 'Edda Marlowe');
    expect(added).toMatchObject({ code: 0, err: '' });
    const { ensemble, link } = JSON.parse(added.out) as { ensemble: Me['ensemble']; link: string };
    const address = `http://127.0.0.1:${port}`;
    const { cookie } = await signIn(address, link);
    const call = caller(address, cookie);
    expect(await call<Me>('GET', '/api/me')).toMatchObject({ name: 'Edda Marlowe', librarian: true, ensemble, ensembles: [ensemble] });
    expect(await call('GET', '/api/shelf')).toMatchObject({ programmes: [], sections: [], people: [{ name: 'Edda Marlowe' }] });
    expect((JSON.parse((await bowline('ensemble', 'list')).out) as Me['ensembles']).map(({ name }) => name)).toEqual(['Our ensemble', 'North Quay Players']);
  });

  it('a librarian who lost theirs gets a new link; names that are not there, or are taken, are told', async () => {
    const again = await bowline('link', 'Edda Marlowe', '--ensemble', 'North Quay Players');
    expect((await signIn(`http://127.0.0.1:${port}`, (JSON.parse(again.out) as { link: string }).link)).cookie).toMatch(/^bowline=/);
    expect(await bowline('ensemble', 'add', 'North Quay Players', '--librarian', 'Other')).toMatchObject({ code: 2, err: expect.stringContaining('already') });
    expect(await bowline('link', 'Nobody', '--ensemble', 'North Quay Players')).toMatchObject({ code: 2, err: expect.stringContaining('Nobody in North Quay Players') });
    expect(await bowline('link', 'Edda Marlowe', '--ensemble', 'South')).toMatchObject({ code: 2, err: expect.stringContaining('no ensemble called "South"') });
    expect(await bowline('ensemble', 'remove')).toMatchObject({ code: 2, err: expect.stringContaining('Usage') });
  });
});
