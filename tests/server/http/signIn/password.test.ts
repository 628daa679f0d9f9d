import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { within } from '../../../../server/signIn/limits.ts';
import { linkFor, tokenOf } from '../../../support/house.ts';
import { knows, openEntrance, type Entrance } from './entering.ts';

let at: Entrance;
beforeEach(async () => (at = await openEntrance()));
afterEach(() => at.house.close());

const GOOD = 'heron under wet slate roofs';
const ADDRESS = 'mona@varnholm.example';
const enter = (password: string, address = ADDRESS) => at.house.visitor().post('/api/sign-in/password', { address, password });

/** The player with an address and a password, at the browser they set it in. */
async function withPassword() {
  await knows(at.house, at.laid.player, ADDRESS);
  const player = await at.enter(at.laid.player);
  expect((await player.put('/api/me/password', { password: GOOD })).status).toBe(200);
  return player;
}

describe('a password', () => {
  it('signs in beside its address, however the address is written and exactly as the password is', async () => {
    await withPassword();
    expect(await enter(GOOD, 'MONA@varnholm.example')).toMatchObject({ status: 200, json: { name: 'Mona Castell' } });
    for (const near of [GOOD.toUpperCase(), `${GOOD} `, GOOD.slice(0, -1)]) expect((await enter(near)).status).toBe(401);
  });

  it('that is wrong, an address nobody has, and one without a password are answered word for word the same', async () => {
    await withPassword();
    await knows(at.house, at.laid.guest, 'jon@varnholm.example');
    const replies = [await enter('not the one at all'), await enter(GOOD, 'nobody@varnholm.example'), await enter(GOOD, 'jon@varnholm.example')];
    expect(replies.map(({ status, text }) => [status, text])).toEqual(Array.from({ length: 3 }, () => [401, expect.stringContaining('NO_MATCH')]));
    expect(new Set(replies.map(({ text }) => text)).size).toBe(1);
    expect(replies.every(({ headers }) => headers['set-cookie'] === undefined)).toBe(true);
  });

  it('cannot be guessed at without end, whoever the address is; the right one is kept out for as long, and a link is not', async () => {
    await withPassword();
    for (const address of [ADDRESS, 'nobody@varnholm.example']) {
      const statuses = await Promise.all(Array.from({ length: 12 }, (_, n) => enter(`guess number ${n} of many`, address).then(({ status }) => status)));
      expect([...statuses].sort()).toEqual([...Array.from({ length: 10 }, () => 401), 429, 429]);
    }
    expect((await enter(GOOD)).json).toMatchObject({ code: 'TOO_OFTEN' });
    expect((await at.house.visitor().post('/api/sign-in', { token: tokenOf(await linkFor(at.house, at.laid.player)) })).status).toBe(200);
    at.pass(16);
    expect((await enter(GOOD)).status).toBe(200);
  });

  it('cannot be guessed at over many addresses from one place of the network', async () => {
    const { attempts, now } = at.house.deps;
    for (let n = 0; n < 59; n += 1) expect(await within(attempts, 'passwordFromNetwork', '127.0.0.1', now())).toBe(true);
    expect([(await enter('heron', 'one@varnholm.example')).status, (await enter('heron', 'another@varnholm.example')).status]).toEqual([401, 429]);
  });

  it('that is entered right is not counted against its owner', async () => {
    await withPassword();
    for (let n = 0; n < 12; n += 1) expect((await enter(GOOD)).status).toBe(200);
  });

  it('is refused as a new one with a sentence where it is weak, and any composition of twelve is taken', async () => {
    await knows(at.house, at.laid.player, ADDRESS);
    const player = await at.enter(at.laid.player);
    for (const [password, code] of [['short one', 'PASSWORD_SHORT'], ['x'.repeat(129), 'PASSWORD_LONG'], ['password1234', 'PASSWORD_COMMON'], ['Mona Castell plays', 'PASSWORD_NAMES'], ['Varnholm in winter', 'PASSWORD_NAMES']]) {
      expect((await player.put('/api/me/password', { password })).json).toMatchObject({ code, text: expect.stringMatching(/Take a/) });
    }
    expect((await player.put('/api/me/password', { password: '840291736650' })).status).toBe(200);
  });

  it('needs an address to stand beside', async () => {
    expect((await (await at.enter(at.laid.player)).put('/api/me/password', { password: GOOD })).json).toMatchObject({ code: 'ADDRESS_FIRST' });
  });

  it('that is set ends every other sign-in, drops its sockets, gives this one another token and tells its owner by letter', async () => {
    await knows(at.house, at.laid.player, ADDRESS);
    const [player, elsewhere] = [await at.enter(at.laid.player), await at.enter(at.laid.player)];
    const before = player.cookie();
    await player.put('/api/me/password', { password: GOOD });
    expect((await elsewhere.get('/api/me')).status).toBe(401);
    expect(at.dropped).toHaveLength(1);
    expect(player.cookie()).not.toBe(before);
    expect((await at.house.visitor().get('/api/me', { cookie: before })).status).toBe(401);
    expect((await player.get('/api/me')).status).toBe(200);
    await expect.poll(() => at.letters.map(({ to, text }) => [to, text])).toEqual([[ADDRESS, expect.stringContaining('ein neues Passwort')]]);
  });

  it('is changed only by whoever gives the present one or has just signed in', async () => {
    const player = await withPassword();
    at.pass(11);
    expect((await player.put('/api/me/password', { password: 'kettle quarry lantern' })).json).toMatchObject({ code: 'PROVE_FIRST' });
    expect((await player.post('/api/me/proof', { password: 'not the one at all' })).json).toMatchObject({ code: 'NOT_THE_PASSWORD' });
    const before = player.cookie();
    expect((await player.post('/api/me/proof', { password: GOOD })).json).toMatchObject({ proven: true });
    expect((await at.house.visitor().get('/api/me', { cookie: before })).status).toBe(401);
    expect((await player.put('/api/me/password', { password: 'kettle quarry lantern' })).status).toBe(200);
    expect([(await enter(GOOD)).status, (await enter('kettle quarry lantern')).status]).toEqual([401, 200]);
  });

  it('asked for as proof cannot be guessed at without end', async () => {
    const player = await withPassword();
    const codes = [];
    for (let n = 0; n < 11; n += 1) codes.push((await player.post('/api/me/proof', { password: `guess number ${n}` })).json.code);
    expect(codes).toEqual([...Array.from({ length: 10 }, () => 'NOT_THE_PASSWORD'), 'TOO_OFTEN']);
  });

  it('goes with the address it stood beside', async () => {
    const player = await withPassword();
    expect((await player.put('/api/me/address', { address: null, language: 'en' })).json).toMatchObject({ address: null, password: false });
    expect((await enter(GOOD)).status).toBe(401);
  });

  it('is in no line the server writes and in no answer', async () => {
    const player = await withPassword();
    await enter('not the one at all');
    expect(at.house.lines.join()).not.toMatch(/heron|not the one/);
    expect((await player.get('/api/me/sign-in')).text).not.toMatch(/argon2|heron/);
  });
});

describe('whoever came by a librarian’s link', () => {
  const byLink = async (person: { id: string }) => {
    const visitor = at.house.visitor();
    await visitor.post('/api/sign-in', { token: tokenOf(await linkFor(at.house, person)) });
    return visitor;
  };

  it('may give themselves a first way, and not change one that is there', async () => {
    expect((await (await byLink(at.laid.guest)).put('/api/me/address', { address: 'jon@varnholm.example', language: 'en' })).status).toBe(200);
    await withPassword();
    const visitor = await byLink(at.laid.player);
    expect((await visitor.get('/api/me/sign-in')).json).toMatchObject({ only: 'Varnholm Strings', may: false });
    for (const reply of [await visitor.put('/api/me/address', { address: 'mine@librarian.example', language: 'en' }), await visitor.put('/api/me/password', { password: 'kettle quarry lantern' }), await visitor.remove('/api/me/identity')]) {
      expect([reply.status, reply.json.code]).toEqual([403, 'BY_LINK']);
    }
  });

  it('gives no way of their own to somebody who belongs to another ensemble too', async () => {
    const { door } = at.house.store;
    const other = (await door.addEnsemble('Ebb Ensemble'))!;
    await door.join(other.id, at.laid.guest.id, { librarian: false, deputy: false });
    expect((await (await byLink(at.laid.guest)).put('/api/me/address', { address: 'mine@librarian.example', language: 'en' })).json).toMatchObject({ code: 'BY_LINK' });
  });

  it('sees and ends what such links opened, and no sign-in of their owner’s own', async () => {
    const player = await at.enter(at.laid.player);
    const visitor = await byLink(at.laid.player);
    const own = (await player.get('/api/me/sign-in')).json.sessions.find((one: { here: boolean }) => one.here).id;
    expect((await visitor.get('/api/me/sign-in')).json.sessions).toHaveLength(1);
    expect((await visitor.remove(`/api/me/sessions/${own}`)).status).toBe(404);
    await visitor.remove('/api/me/sessions');
    expect((await player.get('/api/me')).status).toBe(200);
  });
});
