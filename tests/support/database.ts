import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { inject } from 'vitest';
import { APP, type Connection, DOOR, OWNER } from '../../server/database/connection.ts';
import { TEMPLATE } from './globalSetup.ts';

export interface TestDatabase {
  app: Connection;
  door: Connection;
  owner: Connection;
  /** For a process of its own, as somebody who may act as the others. */
  address: string;
  /** Asks past row-level security. */
  rows<Row extends object>(sql: string, values?: unknown[]): Promise<Row[]>;
  drop(): Promise<void>;
}

/** A database of its own for a test file, with the tables and nothing in them. */
export const createTestDatabase = (): Promise<TestDatabase> => create(TEMPLATE);

/** One without any tables, as PostgreSQL makes it. */
export const createEmptyDatabase = (): Promise<TestDatabase> => create('template1');

async function create(template: string): Promise<TestDatabase> {
  const bootstrap = inject('bootstrap');
  const name = `t_${randomBytes(6).toString('hex')}`;
  await ask(bootstrap, `create database ${name} template ${template} owner ${OWNER}`);
  const as = (user: string): Connection => ({ ...bootstrap, user, database: name });
  return {
    app: as(APP),
    door: as(DOOR),
    owner: as(OWNER),
    address: addressOf({ ...bootstrap, database: name }),
    rows: async <Row extends object>(sql: string, values: unknown[] = []) => (await ask({ ...bootstrap, database: name }, sql, values)) as Row[],
    drop: async () => void (await ask(bootstrap, `drop database ${name} with (force)`)),
  };
}

function addressOf(connection: Connection): string {
  if ('connectionString' in connection) return connection.connectionString;
  const { host, port, user, database } = connection;
  return `postgresql://${user}@localhost/${database}?host=${encodeURIComponent(host)}&port=${port}`;
}

/** Rows of all ensembles. */
export async function rowsIn<Row extends object>({ owner }: TestDatabase, sql: string): Promise<Row[]> {
  const client = new pg.Client({ ...owner, options: '-c bowline.whole=on' });
  await client.connect();
  try {
    return (await client.query<Row>(sql)).rows;
  } finally {
    await client.end();
  }
}

async function ask(connection: Connection, sql: string, values: unknown[] = []): Promise<unknown[]> {
  const client = new pg.Client(connection);
  await client.connect();
  try {
    return (await client.query<object>(sql, values)).rows;
  } finally {
    await client.end();
  }
}
