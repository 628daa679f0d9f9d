import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openLaidHouse, type LaidHouse } from '../../support/laidHouse.ts';
import { linkFor, openHouse, tokenOf, type House } from '../../support/house.ts';
import type { LaidOut } from '../../support/laidOut.ts';

let opened: LaidHouse;
let house: House;
let laid: LaidOut;
beforeAll(async () => {
  opened = await openLaidHouse();
  ({ house, laid } = opened);
});
afterAll(() => opened.close());

describe('signing in', () => {
  it('a link brings a person in once; the second time it says what to do', async () => {
    const token = tokenOf(await linkFor(house, laid.principal));
    const first = house.visitor();
    expect(await first.post('/api/sign-in', { token })).toMatchObject({ status: 200, json: { name: laid.principal.name, librarian: false, memberships: [{ role: 'principal', seat: '1o' }] } });
    expect((await first.get('/api/me')).json.id).toBe(laid.principal.id);
    const second = await house.visitor().post('/api/sign-in', { token });
    expect(second).toMatchObject({ status: 410, json: { code: 'LINK_USED', text: expect.stringContaining('Ask the librarian for a new one') } });
  });

  it('looking at the link, as a preview does, does not use it up', async () => {
    const link = await linkFor(house, laid.player);
    await house.visitor().get(`/sign-in?token=${tokenOf(link)}`);
    expect((await house.visitor().post('/api/sign-in', { token: tokenOf(link) })).status).toBe(200);
  });

  it('the cookie is out of reach of scripts and other sites, and its token is nowhere in the database', async () => {
    const visitor = house.visitor();
    const reply = await visitor.post('/api/sign-in', { token: tokenOf(await linkFor(house, laid.player)) });
    expect(String(reply.headers['set-cookie'])).toMatch(/^bowline=[\w-]{43}; Max-Age=2592000; Path=\/; HttpOnly; SameSite=Lax$/);
    const token = visitor.cookie().split('=')[1]!;
    expect(await house.store.door.session(new TextEncoder().encode(token), new Date())).toBeNull();
    expect((await visitor.get('/api/me')).status).toBe(200);
  });

  it('over https the cookie is bound to the host', async () => {
    const https = await openHouse(house.store, { origin: 'https://bowline.example' });
    const reply = await https.visitor().post('/api/sign-in', { token: tokenOf(await linkFor(house, laid.player)) }, { origin: 'https://bowline.example' });
    expect(String(reply.headers['set-cookie'])).toMatch(/^__Host-bowline=[\w-]{43}; .*Path=\/; HttpOnly; Secure; SameSite=Lax$/);
    expect(reply.headers['strict-transport-security']).toBeDefined();
    await https.close();
  });

  it('signing in again ends the sign-in before; signing out ends it for good', async () => {
    const visitor = house.visitor();
    await visitor.post('/api/sign-in', { token: tokenOf(await linkFor(house, laid.player)) });
    const before = visitor.cookie();
    await visitor.post('/api/sign-in', { token: tokenOf(await linkFor(house, laid.player)) });
    expect((await house.visitor().get('/api/me', { cookie: before })).status).toBe(401);
    const now = visitor.cookie();
    expect((await visitor.get('/api/me')).status).toBe(200);
    await visitor.post('/api/sign-out');
    expect((await house.visitor().get('/api/me', { cookie: now })).json).toMatchObject({ code: 'SIGNED_OUT' });
  });

  it('nothing but health, description and signing in is answered to somebody who is not signed in', async () => {
    const visitor = house.visitor();
    expect((await visitor.get('/api/health')).json).toMatchObject({ well: true });
    expect((await visitor.get('/api/openapi.json')).status).toBe(200);
    for (const path of ['/api/me', '/api/shelf', `/api/parts/${laid.part}`, `/api/parts/${laid.part}/log`, `/api/parts/${laid.part}/engraving`, `/api/parts/${laid.part}/source`, `/api/parts/${laid.part}/export`, `/api/parts/${laid.part}/changes`]) {
      expect([path, (await visitor.get(path)).status]).toEqual([path, 401]);
    }
    expect((await visitor.post('/api/people', { name: 'X' })).status).toBe(401);
  });

  it('a page of another site changes nothing, with the cookie or without', async () => {
    const visitor = await house.signIn(laid.librarian);
    for (const origin of ['http://elsewhere.example', 'https://localhost.evil.example', 'null', 'http://localhost:9999']) {
      expect((await visitor.post('/api/programmes', { title: 'Foreign' }, { origin })).json).toMatchObject({ code: 'FOREIGN_PAGE' });
    }
    expect((await visitor.post('/api/programmes', { title: 'Own' })).status).toBe(200);
    expect((await visitor.get('/api/shelf')).json.programmes.map((one: { title: string }) => one.title)).not.toContain('Foreign');
  });

  it('tokens of the wrong form are answered, not broken on', async () => {
    for (const body of [{ token: 'x' }, { token: 5 }, {}, null, [], { token: 'a'.repeat(50), more: 1 }, { token: `\u0000${'a'.repeat(30)}` }]) {
      const { status } = await house.visitor().post('/api/sign-in', body);
      expect([400, 410]).toContain(status);
    }
  });

  it('floods are slowed down with a sentence', async () => {
    const slow = await openHouse(house.store, { requestsPerMinute: 5 });
    const visitor = slow.visitor();
    const replies = [];
    for (let request = 0; request < 8; request++) replies.push(await visitor.get('/api/openapi.json'));
    expect(replies.map((reply) => reply.status)).toEqual([200, 200, 200, 200, 200, 429, 429, 429]);
    expect(replies.at(-1)!.json).toMatchObject({ code: 'TOO_MUCH', text: expect.stringContaining('Wait a minute') });
    await slow.close();
  });
});

describe('headers', () => {
  it('no page of ours runs foreign scripts or is shown in a foreign frame', async () => {
    const { headers } = await house.visitor().get('/api/health');
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toContain('upgrade-insecure-requests');
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['strict-transport-security']).toBeUndefined();
  });
});
