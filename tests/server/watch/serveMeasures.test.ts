import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createNotices } from '../../../server/operations/notices.ts';
import { createDaybook } from '../../../server/watch/daybook.ts';
import { serveMeasures } from '../../../server/watch/serveMeasures.ts';
import { watchServer } from '../../../server/watch/watchServer.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

let database: TestDatabase, store: OneEnsemble;
beforeAll(async () => {
  database = await createTestDatabase();
  store = await inPostgres(database);
});
afterAll(async () => {
  await store.close();
  await database.drop();
});

describe('the door of the numbers', () => {
  it('gives them to who asks for them, nothing else, and only one has a port', async () => {
    const notices = createNotices();
    let up = false;
    const { measures, sockets } = watchServer({ daybook: createDaybook({ level: 'silent', person: false, write: () => {} }), installation: store.installation, notices, redis: { up: () => up } });
    sockets(() => 7);
    notices.logged('part', [{} as never, {} as never], true);
    notices.logged('part', [{} as never], false);
    const door = await serveMeasures(measures, { host: '127.0.0.1', port: 0 });
    const address = `http://127.0.0.1:${door.port}`;
    const reply = await fetch(`${address}/metrics`);
    expect([reply.status, reply.headers.get('content-type')]).toEqual([200, expect.stringContaining('text/plain')]);
    const text = await reply.text();
    for (const line of ['bowline_sockets 7', 'bowline_redis_up 0', 'bowline_batch_rows_count 1', 'bowline_batch_rows_sum 2']) expect(text.split('\n')).toContain(line);
    expect(text).toMatch(/^bowline_database_connections_open\{role="app"\} \d+$/m);
    expect(text).toMatch(/^bowline_database_connections_waiting\{role="door"\} 0$/m);
    await store.installation.queue.put({ job: randomUUID(), kind: 'print', ensemble: store.ensemble });
    expect(text).toMatch(/^bowline_jobs_waiting\{kind="print"\} 0$/m);
    expect(await (await fetch(`${address}/metrics`)).text()).toMatch(/^bowline_jobs_waiting\{kind="print"\} 1$/m);
    up = true;
    expect((await (await fetch(`${address}/metrics`)).text()).split('\n')).toContain('bowline_redis_up 1');
    for (const [path, method] of [['/', 'GET'], ['/metrics', 'POST'], ['/api/health', 'GET'], ['/metrics/../api', 'GET']] as const) expect((await fetch(`${address}${path}`, { method })).status).toBe(404);
    await expect(serveMeasures(measures, { host: '127.0.0.1', port: door.port })).rejects.toThrow(`METRICS_PORT=${door.port} cannot be opened on 127.0.0.1 (EADDRINUSE)`);
    door.close();
  });
});
