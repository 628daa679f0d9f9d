import pg from 'pg';
import { APP, BOOTSTRAP, type Connection, DATABASE, OWNER } from './connection.ts';
import type { Cluster } from './cluster.ts';

/** The database and the two roles that enter it; nothing happens where they are there already. */
export async function createDatabase(cluster: Cluster, database = DATABASE): Promise<void> {
  await as(cluster.connection(BOOTSTRAP, 'postgres'), async (client) => {
    for (const role of [OWNER, APP]) {
      const { rowCount } = await client.query('select 1 from pg_roles where rolname = $1', [role]);
      if (!rowCount) await client.query(`create role ${role} login nosuperuser nobypassrls nocreatedb nocreaterole`);
    }
    const { rowCount } = await client.query('select 1 from pg_database where datname = $1', [database]);
    if (!rowCount) await client.query(`create database ${database} owner ${OWNER}`);
  });
}

/** What the server may do. The log and what was refused can be read and added to, nothing else. */
export async function grantToApp(owner: Connection): Promise<void> {
  await as(owner, async (client) => {
    await client.query(`grant select, insert, update, delete on all tables in schema public to ${APP}`);
    await client.query(`revoke update, delete on operation, refused_operation, edition, _prisma_migrations from ${APP}`);
    await client.query(`revoke insert on _prisma_migrations from ${APP}`);
  });
}

async function as(connection: Connection, work: (client: pg.Client) => Promise<void>): Promise<void> {
  const client = new pg.Client(connection);
  client.on('error', () => {});
  await client.connect();
  try {
    await work(client);
  } finally {
    await client.end();
  }
}
