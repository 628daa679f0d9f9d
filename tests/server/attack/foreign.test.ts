import { beforeAll, describe, expect, it } from 'vitest';
import { attacked } from './attacked.ts';
import { addressIn, routesOf, sample, type Route } from './described.ts';

const { scene } = attacked();
let changing: Route[];
beforeAll(async () => (changing = (await routesOf(scene())).filter(({ method }) => method !== 'GET')));

const REFUSED = { status: 403, json: { code: 'FOREIGN_PAGE', text: expect.stringContaining('own address') } };
const shelf = async () => (await scene().send('/api/shelf', { cookie: scene().librarian.cookie })).text;

describe('a page of another site that uses the reader’s cookie', { timeout: 300_000 }, () => {
  it.each([
    ['names its own origin', { origin: 'http://elsewhere.example' }],
    ['has no origin of its own', { origin: 'null' }],
    ['lies beside ours on another port', { origin: 'http://127.0.0.1:1' }],
    ['is named like ours', { origin: 'http://127.0.0.1.evil.example' }],
    ['names none, and the browser says that it is foreign', { 'sec-fetch-site': 'cross-site' }],
    ['names none, and the browser says that it lies beside ours', { 'sec-fetch-site': 'same-site' }],
    ['names ours, and the browser says otherwise', { 'sec-fetch-site': 'cross-site', origin: 'ours' }],
  ])('%s: every route that changes something refuses it', async (_, headers: Record<string, string>) => {
    const before = await shelf();
    const sent = headers.origin === 'ours' ? { ...headers, origin: scene().address } : headers;
    expect(changing.length).toBeGreaterThan(40);
    for (const { method, path, body } of changing) {
      const answer = await scene().send(addressIn(scene(), path), { method, cookie: scene().librarian.cookie, ...(body ? { body: sample(body) } : {}), headers: sent });
      expect({ path, ...answer }).toMatchObject({ path, ...REFUSED });
    }
    expect(await shelf()).toBe(before);
    expect((await scene().send('/api/me', { cookie: scene().librarian.cookie })).status).toBe(200);
  });

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=b', undefined])('a form needs no leave of ours to be sent (%s): nothing is read from one but a score', async (type) => {
    const before = await shelf();
    for (const { method, path, body, takesFile } of changing.filter(({ body: takes, takesFile: file }) => takes ?? file)) {
      if (takesFile && type?.startsWith('multipart')) continue;
      const answer = await scene().send(addressIn(scene(), path), { method, cookie: scene().librarian.cookie, body: JSON.stringify(body ? sample(body) : {}), headers: { origin: scene().address, ...(type ? { 'content-type': type } : {}) } });
      expect([path, answer.status]).toEqual([path, expect.toSatisfy((status: number) => status >= 400 && status < 500, 'a refusal')]);
    }
    expect(await shelf()).toBe(before);
  });

  it('no other site is told by a header that it may read an answer', async () => {
    for (const path of ['/api/me', '/api/shelf', '/api/openapi.json', '/socket/?EIO=4&transport=polling', '/']) {
      const { headers } = await scene().send(path, { cookie: scene().librarian.cookie, headers: { origin: 'http://elsewhere.example' } });
      expect([path, Object.keys(headers).filter((name) => name.startsWith('access-control-'))]).toEqual([path, []]);
    }
    const asked = await scene().send('/api/programmes', { method: 'OPTIONS', headers: { origin: 'http://elsewhere.example', 'access-control-request-method': 'PUT' } });
    expect(asked.status).toBeGreaterThanOrEqual(400);
    expect(asked.headers['access-control-allow-origin']).toBeUndefined();
  });

  it('looking changes nothing: no GET of the description writes', async () => {
    const before = await shelf();
    for (const { path } of (await routesOf(scene())).filter(({ method, path: one }) => method === 'GET' && !one.includes('print'))) await scene().send(addressIn(scene(), path), { cookie: scene().librarian.cookie });
    expect(await shelf()).toBe(before);
  });
});

describe('what every answer carries', () => {
  it.each(['/', '/shelf', '/sign-in', '/api/me', '/api/health', '/api/none', '/assets/none.js'])('%s: no foreign script, frame, guess of its kind or address passed on', async (path) => {
    const { headers } = await scene().send(path, { cookie: scene().player.cookie });
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("default-src 'self'");
    for (const part of ["script-src 'self' 'wasm-unsafe-eval'", "style-src 'self';", "object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'", "form-action 'self'"]) expect(`${policy};`).toContain(part);
    expect(policy).not.toContain('unsafe-inline');
    expect(headers).toMatchObject({ 'x-content-type-options': 'nosniff', 'referrer-policy': 'no-referrer', 'cross-origin-resource-policy': 'same-origin' });
    expect(headers['permissions-policy']).toContain('microphone=()');
    expect(headers.server ?? headers['x-powered-by']).toBeUndefined();
  });

  it('private answers are kept by nobody on the way, and by the browser only where it has to ask again', async () => {
    for (const { path } of (await routesOf(scene())).filter(({ method, path: one }) => method === 'GET' && !one.includes('print'))) {
      const { headers } = await scene().send(addressIn(scene(), path), { cookie: scene().librarian.cookie });
      expect([path, headers['cache-control']]).toEqual([path, expect.stringMatching(/^no-store$|^private, no-cache$/)]);
    }
  });
});
