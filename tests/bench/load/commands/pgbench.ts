import { execFile } from 'node:child_process';
import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Installation } from '../installation.ts';

const DEBIAN = '/usr/lib/postgresql';

/** PostgreSQL's own benchmark program; it does not come with the embedded one. PGBENCH names another. */
export function findPgbench(): string | null {
  if (process.env.PGBENCH) return process.env.PGBENCH;
  const versions = existsSync(DEBIAN) ? readdirSync(DEBIAN) : [];
  return versions.map((version) => join(DEBIAN, version, 'bin/pgbench')).find((path) => existsSync(path)) ?? null;
}

/** Commands a second of `clients` connections, each adding one row to its part at a time. `parts`: as many as clients, or one for all. */
export async function pgbench(program: string, { ways: { app }, store, folder }: Installation, clients: number, parts: readonly string[], person: string, seconds: number): Promise<number> {
  const script = join(folder, 'bare.sql');
  const chosen = parts.length === 1 ? `'${parts[0]}'` : `(array[${parts.map((part) => `'${part}'`).join(',')}])[:client_id + 1]`;
  const input = '{"proposal":"3f0c3ff0-6d3c-4d8e-8a39-0f4f5f0c9d11","revision":1,"measure":1,"vote":"for"}';
  const events = '[{"type":"voteCast","proposal":"3f0c3ff0-6d3c-4d8e-8a39-0f4f5f0c9d11","measure":1,"vote":"for"}]';
  writeFileSync(script, `with place as (update part set head = head + 1 where id = ${chosen} returning id, head) insert into operation (part_id, seq, operation, name, input, events, person_id, by_name, at) select id, head, gen_random_uuid()::text, 'castVote', '${input}', '${events}', '${person}', 'Ada Grell', now() from place on conflict do nothing returning seq;\n`);
  const { host, port, user, database } = app;
  const { stdout } = await promisify(execFile)(program, ['-n', '-M', 'prepared', '-h', host, '-p', String(port), '-U', user, '-c', String(clients), '-j', String(Math.min(2, clients)), '-T', String(seconds), '-f', script, database], { env: { ...process.env, PGOPTIONS: `-c bowline.ensemble=${store.ensemble}` } });
  return Number(/tps = ([\d.]+)/.exec(stdout)![1]);
}
