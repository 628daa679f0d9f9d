import pg from 'pg';
import type { Cluster } from './cluster.ts';
import { APP, BOOTSTRAP, type Connection, DATABASE, DOOR, OWNER } from './connection.ts';
import { GRANTS } from './grants.ts';
import { Unstartable } from './unstartable.ts';

/** The database and the roles that enter it; nothing happens where they are there already. */
export async function createDatabase(cluster: Cluster, database = DATABASE): Promise<void> {
  await as(cluster.connection(BOOTSTRAP, 'postgres'), async (client) => {
    for (const role of [OWNER, APP, DOOR]) {
      const { rows } = await client.query<{ login: boolean }>('select rolcanlogin as login from pg_roles where rolname = $1', [role]);
      if (!rows[0]) await client.query(`create role ${role} login nosuperuser nobypassrls nocreatedb nocreaterole`);
      else if (!rows[0].login) await client.query(`alter role ${role} login`);
    }
    const { rowCount } = await client.query('select 1 from pg_database where datname = $1', [database]);
    if (!rowCount) await client.query(`create database ${database} owner ${OWNER}`);
  });
}

/** What the server may do: what the table of grants says, and nothing that it does not say. */
export async function grantToServer(owner: Connection): Promise<void> {
  await as(owner, async (client) => {
    await client.query('begin');
    // Several servers may start at once, and a grant changes rows that they share.
    await client.query('select pg_advisory_xact_lock(4640019)');
    for (const role of [APP, DOOR]) await client.query(`revoke all on all tables in schema public from ${role}`);
    for (const { table, role, may } of GRANTS) await client.query(`grant ${may} on "${table}" to ${role}`);
    await client.query('commit');
  });
}

/** Lets whoever a named database is entered as act as the two that the server works as; throws Unstartable where they may not be let. */
export async function letActAs(owner: Connection): Promise<void> {
  await as(owner, async (client) => {
    for (const role of [APP, DOOR]) {
      // Before PostgreSQL 16 whoever was a member could act as the role, and had no word for less.
      const { rows } = await client.query<{ may: boolean }>("select pg_has_role(current_user, $1, case when current_setting('server_version_num')::int < 160000 then 'member' else 'set' end) as may", [role]);
      if (rows[0]!.may) continue;
      try {
        await client.query(`grant ${role} to current_user`);
      } catch {
        throw new Unstartable(`The role of DATABASE_URL may not act as ${role}. Whoever keeps the database lets it: grant ${APP}, ${DOOR} to ${(await client.query<{ me: string }>('select quote_ident(current_user) as me')).rows[0]!.me};`);
      }
    }
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
