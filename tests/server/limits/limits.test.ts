import { randomBytes } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addressKey } from '../../../server/limits/addressKey.ts';
import { createCounts } from '../../../server/limits/counts.ts';
import { createPersonLimit } from '../../../server/limits/personLimit.ts';
import { linkFor, openHouse, tokenOf, type House } from '../../support/house.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

/** What a request from somewhere is answered. */
const ask = async (house: House, { from = '203.0.113.7', method = 'GET' as 'GET' | 'POST', url = '/api/openapi.json', headers = {}, body = undefined as unknown }) =>
  (await house.app.inject({ method, url, remoteAddress: from, headers: { host: 'localhost', origin: 'http://localhost', ...headers }, ...(body === undefined ? {} : { payload: body as object }) })).statusCode;
const guess = (house: House, from: string, headers = {}) => ask(house, { from, method: 'POST', url: '/api/sign-in', headers, body: { token: randomBytes(32).toString('base64url') } });

describe('whose request it is', () => {
  it('an IPv4 address written as IPv6 is itself; an IPv6 address is its network of 64 bits (RFC 4291, 2.5.4)', () => {
    expect(addressKey('203.0.113.7')).toBe('203.0.113.7');
    expect(addressKey('::ffff:203.0.113.7')).toBe('203.0.113.7');
    expect(addressKey('2001:db8:0:1::5')).toBe('2001:db8:0:1');
    expect(addressKey('2001:0db8:0000:0001:ffff:ffff:ffff:ffff')).toBe('2001:db8:0:1');
    expect(addressKey('2001:db8:0:2::5')).not.toBe(addressKey('2001:db8:0:1::5'));
    expect(addressKey('::1')).toBe('0:0:0:0');
    expect(addressKey('fe80::1%eth0')).toBe('fe80:0:0:0');
  });

  it('what a reader claims about their address counts for nothing, unless a named proxy says it', async () => {
    const claims = (n: number) => ({ 'x-forwarded-for': `198.51.100.${n}`, forwarded: `for=198.51.100.${n}` });
    const open = await openHouse(await inMemory(), { requestsPerMinute: 3 });
    const statuses = [];
    for (let n = 1; n <= 5; n++) statuses.push(await ask(open, { headers: claims(n) }));
    expect(statuses).toEqual([200, 200, 200, 429, 429]);
    await open.close();

    const behind = await openHouse(await inMemory(), { requestsPerMinute: 1 }, { proxies: ['10.0.0.0/8'] });
    expect(await ask(behind, { from: '10.1.2.3', headers: claims(1) })).toBe(200);
    expect(await ask(behind, { from: '10.1.2.3', headers: claims(2) })).toBe(200);
    expect(await ask(behind, { from: '10.1.2.3', headers: claims(1) })).toBe(429);
    // The proxy adds whom it saw at the end; what stood there before was the reader's own invention.
    expect(await ask(behind, { from: '10.1.2.3', headers: { 'x-forwarded-for': '192.0.2.99, 198.51.100.2' } })).toBe(429);
    // Past the proxy nobody is believed.
    expect(await ask(behind, { from: '203.0.113.9', headers: claims(3) })).toBe(200);
    expect(await ask(behind, { from: '203.0.113.9', headers: claims(4) })).toBe(429);
    await behind.close();
  });
});

describe('floods', () => {
  it('a made-up cookie with every request is no way round the limit of an address', async () => {
    const house = await openHouse(await inMemory(), { requestsPerMinute: 2 });
    const statuses = [];
    for (let n = 0; n < 10; n++) statuses.push(await ask(house, { headers: { cookie: `bowline=${randomBytes(32).toString('base64url')}` } }));
    expect(statuses).toEqual([...Array(8).fill(200), 429, 429]);
    await house.close();
  });

  it('one sign-in is held to its own, from however many addresses', async () => {
    const house = await openHouse(await inMemory(), { requestsPerMinute: 3 });
    const statuses = [];
    for (let n = 0; n < 5; n++) statuses.push(await ask(house, { from: `203.0.113.${n}`, headers: { cookie: 'bowline=one-and-the-same' } }));
    expect(statuses).toEqual([200, 200, 200, 429, 429]);
    await house.close();
  });

  it('a person is held to a measure over all connections of all servers, and is heard again when the minute is over', async () => {
    const counts = createCounts(null);
    let now = 0;
    const [one, two] = [createPersonLimit(counts, 100, () => now), createPersonLimit(counts, 100, () => now)];
    let through = 0;
    for (let n = 0; n < 400; n++) {
      if ((n % 2 ? one : two)('ilya')) through += 1;
      await Promise.resolve();
      await new Promise((resolve) => setImmediate(resolve));
    }
    // Each server may let a bundle more through before it hears of the others'.
    expect(through).toBeGreaterThanOrEqual(100);
    expect(through).toBeLessThanOrEqual(100 + 3 * 25);
    expect(one('mona')).toBe(true);
    now += 61_000;
    expect(one('ilya')).toBe(true);
  });
});

describe('guessing at sign-ins', () => {
  let house: House;
  beforeAll(async () => void (house = await openHouse(await inMemory())));
  afterAll(() => house.close());

  it('from one address ends after forty, also with a link that holds; from elsewhere the link still works', async () => {
    const person = await house.store.people.add('Ilya Brandt', false);
    const statuses: number[] = [];
    for (let n = 0; n < 45; n++) statuses.push(await guess(house, '203.0.113.7', { cookie: `bowline=${n}` }));
    expect(statuses).toEqual([...Array(40).fill(410), ...Array(5).fill(429)]);
    const body = { token: tokenOf(await linkFor(house, person)) };
    expect(await ask(house, { method: 'POST', url: '/api/sign-in', body })).toBe(429);
    expect(await ask(house, { from: '198.51.100.20', method: 'POST', url: '/api/sign-in', body })).toBe(200);
  });

  it('from many addresses ends too: each is then given four, and who has not failed comes in', async () => {
    for (let n = 0; n < 400; n++) await guess(house, `2001:db8:${n.toString(16)}::1`);
    const statuses: number[] = [];
    for (let n = 0; n < 6; n++) statuses.push(await guess(house, '192.0.2.1'));
    expect(statuses).toEqual([410, 410, 410, 410, 429, 429]);
    const person = await house.store.people.add('Mona Castell', false);
    expect(await ask(house, { from: '192.0.2.2', method: 'POST', url: '/api/sign-in', body: { token: tokenOf(await linkFor(house, person)) } })).toBe(200);
  });
});
