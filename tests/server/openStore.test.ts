import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { createClosing } from '../../server/closing.ts';
import { openStore } from '../../server/openStore.ts';
import { readSettings } from '../../server/settings.ts';
import { layOut } from '../support/laidOut.ts';
import { oneEnsemble } from '../support/oneEnsemble.ts';

/** An address as DATABASE_URL has it, of the run's own PostgreSQL by its socket. */
function addressOf(user: string, database: string): string {
  const { host, port } = inject('bootstrap') as { host: string; port: number };
  return `postgresql://${user}@localhost:${port}/${database}?host=${encodeURIComponent(host)}`;
}

async function asKeeper(sql: string): Promise<void> {
  const client = new pg.Client(inject('bootstrap'));
  await client.connect();
  await client.query(sql).finally(() => client.end());
}

const word = randomBytes(5).toString('hex');
const names = { house: `house_${word}`, keeper: `keeper_${word}`, guest: `guest_${word}` };

describe('a database that was named', () => {
  beforeAll(async () => {
    await asKeeper(`create role ${names.keeper} login superuser`);
    await asKeeper(`create role ${names.guest} login`);
    await asKeeper(`create database ${names.house} owner ${names.guest}`);
  });
  afterAll(async () => {
    await asKeeper(`drop database ${names.house} with (force)`);
    await asKeeper(`drop role ${names.keeper}`);
    await asKeeper(`drop role ${names.guest}`);
  });
  const open = async (role: string) => {
    const closing = createClosing();
    const settings = readSettings({ DATABASE_URL: addressOf(role, names.house) }, []);
    try {
      return { installation: await openStore(settings, closing, () => {}), close: () => closing.close() };
    } catch (reason) {
      await closing.close();
      throw reason;
    }
  };

  it('is refused in words where its role may not act as those the server works as, and told how it may', async () => {
    await expect(open(names.guest)).rejects.toThrow(new RegExp(`grant bowline_app, bowline_door to ${names.guest};`));
  });

  it('is worked in as the unprivileged roles once its keeper has let it', async () => {
    await asKeeper(`grant bowline_app, bowline_door to ${names.guest}`);
    const { installation, close } = await open(names.guest);
    const store = await oneEnsemble(installation);
    const { part } = await layOut(store);
    expect((await store.library.part(part))?.id).toBe(part);
    expect(await installation.of('another').library.part(part)).toBeNull();
    await close();
  });

  it('a superuser’s address passes no row of another ensemble either', async () => {
    const { installation, close } = await open(names.keeper);
    const store = await oneEnsemble(installation);
    const { part } = await layOut(store);
    expect((await store.library.part(part))?.id).toBe(part);
    expect(await installation.of('another').library.part(part)).toBeNull();
    expect(await installation.of('another').people.all()).toEqual([]);
    await close();
  });
});
