import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Person } from '../../../server/store/people.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { inMemory, inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

let database: TestDatabase;
const KINDS: [string, () => Promise<OneEnsemble>][] = [
  ['memory', inMemory],
  ['PostgreSQL', async () => inPostgres((database = await createTestDatabase()))],
];
const NOW = new Date('2026-11-25T12:00:00Z');
const LATER = new Date('2026-11-26T12:00:00Z');
const token = () => new Uint8Array(randomBytes(32));
const known = ({ id, name }: Person) => ({ id, name });
let nth = 0;
const to = (name: string) => ({ address: `${name}${(nth += 1)}@varnholm.example`, language: 'de' as const });

describe.each(KINDS)('ways to sign in, in %s', (kind, open) => {
  let store: OneEnsemble, mona: Person, ilya: Person;
  beforeAll(async () => {
    store = await open();
    [mona, ilya] = [await store.people.add('Mona Castell', false), await store.people.add('Ilya Brandt', false)];
  });
  afterAll(async () => {
    await store.close();
    if (kind === 'PostgreSQL') await database.drop();
  });

  it('an address is one person’s, and a person has one', async () => {
    const { door } = store;
    const [first, second] = [to('mona'), to('castell')];
    expect(await door.setAddress(mona.id, first, NOW)).toBe(true);
    expect(await door.setAddress(ilya.id, first, NOW)).toBe(false);
    expect(await door.whoseAddress(first.address)).toEqual({ person: known(mona), to: { ...first, confirmed: true } });
    expect(await door.setAddress(mona.id, second, null)).toBe(true);
    expect(await door.whoseAddress(first.address)).toBeNull();
    expect(await door.address(mona.id)).toEqual({ ...second, confirmed: false });
    await door.forgetAddress(mona.id);
    expect(await door.address(mona.id)).toBeNull();
  });

  it('a confirmed address displaces one that somebody else only wrote down, and not the other way round', async () => {
    const { door } = store;
    const wanted = to('shared');
    await door.setAddress(mona.id, wanted, null);
    expect(await door.setAddress(ilya.id, wanted, null)).toBe(false);
    expect(await door.setAddress(ilya.id, wanted, NOW)).toBe(true);
    expect(await door.address(mona.id)).toBeNull();
    expect(await door.setAddress(mona.id, wanted, null)).toBe(false);
  });

  it('of two who confirm one address at once, one has it', async () => {
    const wanted = to('race');
    const answers = await Promise.all([mona, ilya].map(({ id }) => store.door.setAddress(id, wanted, NOW)));
    expect([...answers].sort()).toEqual([false, true]);
  });

  it('a claim is taken once, by its own person, in time; a new one puts the one before away', async () => {
    const { door } = store;
    const [old, present, wanted] = [token(), token(), to('claimed')];
    await door.claimAddress(mona.id, old, to('typo'), LATER);
    await door.claimAddress(mona.id, present, wanted, LATER);
    expect(await door.claimed(mona.id, NOW)).toBe(wanted.address);
    expect(await door.takeClaim(mona.id, old, NOW)).toBeNull();
    expect(await door.takeClaim(ilya.id, present, NOW)).toBeNull();
    expect(await door.takeClaim(mona.id, present, LATER)).toBeNull();
    const answers = await Promise.all([door.takeClaim(mona.id, present, NOW), door.takeClaim(mona.id, present, NOW)]);
    expect(answers.filter(Boolean)).toEqual([wanted]);
  });

  it('a password is kept, changed and done away with', async () => {
    const { door } = store;
    await door.setPassword(mona.id, 'one', NOW);
    await door.setPassword(mona.id, 'two', NOW);
    expect([await door.password(mona.id), await door.password(ilya.id), await door.password('')]).toEqual(['two', null, null]);
    await door.setPassword(mona.id, null, NOW);
    expect(await door.password(mona.id)).toBeNull();
  });

  it('an identity is one person’s; the same subject of another issuer is somebody else', async () => {
    const { door } = store;
    expect(await door.bindIdentity(mona.id, 'https://a.example', '17', NOW)).toBe(true);
    expect(await door.bindIdentity(mona.id, 'https://a.example', '17', NOW)).toBe(true);
    expect(await door.bindIdentity(ilya.id, 'https://a.example', '17', NOW)).toBe(false);
    expect(await door.whoseIdentity('https://a.example', '17')).toEqual(known(mona));
    expect(await door.whoseIdentity('https://b.example', '17')).toBeNull();
    expect([await door.knowsIdentity(mona.id, 'https://a.example'), await door.knowsIdentity(mona.id, 'https://b.example')]).toEqual([true, false]);
    await door.forgetIdentities(mona.id);
    expect(await door.whoseIdentity('https://a.example', '17')).toBeNull();
  });

  it('an errand is taken once and in time', async () => {
    const { door } = store;
    const [one, late, link] = [token(), token(), token()];
    await door.beginErrand(one, { session: 's', link: null }, LATER);
    await door.beginErrand(late, { session: null, link }, NOW);
    expect(await door.takeErrand(late, NOW)).toBeNull();
    const answers = await Promise.all([door.takeErrand(one, NOW), door.takeErrand(one, NOW)]);
    expect(answers.filter(Boolean)).toEqual([{ session: 's', link: null }]);
  });

  it('invitations are listed while they are open, and withdrawn by their own ensemble alone', async () => {
    const { door, ensemble } = store;
    const other = (await door.addEnsemble(`Ebb Ensemble ${kind}`))!.id;
    const [handed, sent, link, old] = [token(), token(), token(), token()];
    const letter = to('invited');
    await door.addLink(mona.id, handed, LATER, ensemble, { invitation: true, letter: null });
    await door.addLink(ilya.id, sent, new Date('2026-11-27T12:00:00Z'), ensemble, { invitation: true, letter });
    await door.addLink(mona.id, link, LATER, ensemble);
    await door.addLink(mona.id, old, NOW, ensemble, { invitation: true, letter: null });
    const open = await door.invitations(ensemble, NOW);
    expect(open).toEqual([
      { id: expect.any(String), person: known(mona), address: null, until: LATER },
      { id: expect.any(String), person: known(ilya), address: letter.address, until: new Date('2026-11-27T12:00:00Z') },
    ]);
    expect(await door.withdraw(other, open[0]!.id, NOW)).toBe(false);
    expect([await door.withdraw(ensemble, open[0]!.id, NOW), await door.withdraw(ensemble, open[0]!.id, NOW)]).toEqual([true, false]);
    expect(await door.useLink(handed, NOW)).toBeNull();
    expect(await door.useLink(sent, NOW)).toEqual({ person: known(ilya), ensemble, invitation: true, letter });
    expect(await door.invitations(ensemble, NOW)).toEqual([]);
  });

  it('sign-ins are listed, the last used first, while they hold; another token opens a renewed one', async () => {
    const { door, ensemble } = store;
    const [one, two, renewed] = [token(), token(), token()];
    const coming = { way: 'password', browser: 'Firefox', device: 'tablet', at: NOW } as const;
    const first = await door.openSession(ilya.id, one, LATER, null, coming);
    const second = await door.openSession(ilya.id, two, LATER, ensemble, { ...coming, way: 'link', browser: 'Safari' });
    const used = new Date(NOW.getTime() + 60_000);
    await door.touch(first, used, LATER);
    expect(await door.sessions(ilya.id, used)).toEqual([
      { id: first, only: null, way: 'password', browser: 'Firefox', device: 'tablet', begun: NOW, used },
      { id: second, only: ensemble, way: 'link', browser: 'Safari', device: 'tablet', begun: NOW, used: NOW },
    ]);
    await door.renew(first, renewed, used);
    expect([await door.session(one, used), (await door.session(renewed, used))?.proven]).toEqual([null, used]);
    await door.revoke(first, used);
    await door.touch(first, used, LATER);
    expect((await door.sessions(ilya.id, used)).map(({ id }) => id)).toEqual([second]);
    expect(await door.sessions(ilya.id, LATER)).toEqual([]);
  });

  it('tries are counted in stretches, and many at once are as many as one after another', async () => {
    const { attempts } = store.installation;
    const key = `k${(nth += 1)}`;
    const counts = await Promise.all(Array.from({ length: 8 }, () => attempts.count(key, 60, NOW)));
    expect([...counts].sort()).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(await attempts.count(key, 60, new Date(NOW.getTime() + 59_999))).toBe(9);
    expect(await attempts.count(key, 60, new Date(NOW.getTime() + 60_000))).toBe(1);
    await attempts.forget(key);
    expect(await attempts.count(key, 60, NOW)).toBe(1);
  });
});

describe('in the database', () => {
  it('a password is shown for the person a connection was told, and to no other role', async () => {
    const own = await createTestDatabase();
    const store = await inPostgres(own);
    const mona = await store.people.add('Mona Castell', false);
    await store.door.setPassword(mona.id, 'kept form', NOW);
    const rows = async (connection: pg.ClientConfig, person: string) => {
      const client = new pg.Client(connection);
      await client.connect();
      try {
        await client.query("select set_config('bowline.person', $1, false)", [person]);
        return (await client.query('select hash from password')).rows;
      } finally {
        await client.end();
      }
    };
    expect(await rows(own.door, mona.id)).toEqual([{ hash: 'kept form' }]);
    expect(await rows(own.door, 'another')).toEqual([]);
    expect(await rows(own.owner, mona.id)).toEqual([]);
    await expect(rows(own.app, mona.id)).rejects.toThrow(/permission denied/);
    await store.close();
    await own.drop();
  });
});
