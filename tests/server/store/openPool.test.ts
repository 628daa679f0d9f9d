import pg from 'pg';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { openPool } from '../../../server/store/openPool.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';

describe('connections to the database', () => {
  let database: TestDatabase;
  beforeAll(async () => void (database = await createTestDatabase()));
  afterAll(() => database.drop());

  it('one that the database ends while somebody holds it between two statements ends no process, and is not used again', async () => {
    const pool = openPool(database.app, 1);
    const other = new pg.Client(inject('bootstrap'));
    await other.connect();
    const client = await pool.connect();
    const { rows } = await client.query<{ pid: number }>('select pg_backend_pid() as pid');
    // Not `once` of node:events, which would hear the very 'error' that this is about.
    const ended = new Promise<unknown>((resolve) => client.once('end', resolve));
    await other.query('select pg_terminate_backend($1)', [rows[0]!.pid]);
    await ended;
    client.release();
    expect((await pool.query('select 1 as one')).rows).toEqual([{ one: 1 }]);
    await Promise.all([pool.end(), other.end()]);
  });
});
