import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { attacked } from './attacked.ts';
import { addressIn, bodyWith, placesOf, routesOf, sample, type Route } from './described.ts';

const { scene } = attacked();
let routes: (Route & { body: NonNullable<Route['body']> })[];
beforeAll(async () => (routes = (await routesOf(scene())).filter((route): route is (typeof routes)[number] => route.body !== null)));

/** Fields that would mean something if they were read. */
const EXTRA: Record<string, unknown> = { librarian: true, deputy: true, ensemble: randomUUID(), ensemble_id: randomUUID(), ensembleId: randomUUID(), by: 'x', byName: 'x', at: '2020-01-01T00:00:00Z', seq: 1, roles: ['principal'], role: 'principal', locked: false, admin: true, password: 'x', session: 'x' };

describe('a field nobody asked for', { timeout: 300_000 }, () => {
  it('is refused by name on every route, in every object of its body', async () => {
    expect(routes.length).toBeGreaterThan(30);
    let tried = 0;
    for (const { method, path, body } of routes) {
      const objects = placesOf(body).filter(({ shape }) => shape.type === 'object' && shape.properties);
      for (const { shape } of objects) {
        // The numbers of the checker are named by its rules; what is no number of theirs is refused by them.
        for (const [name, value] of Object.entries(EXTRA).filter(([one]) => !(one in shape.properties!))) {
          // A refused id keeps its refusal: each of the two asks under ids of its own.
          const asked = (cookie: string) => scene().send(addressIn(scene(), path), { method, cookie, body: bodyWith(body, shape, { ...(sample(shape) as object), [name]: value }) });
          const first = await asked(scene().librarian.cookie);
          const { status, json } = first.json?.code === 'NOT_YOUR_ROLE' ? await asked(scene().principal.cookie) : first;
          tried += 1;
          // Whoever fails to come in so often is not heard any more, whatever they bring.
          if (path.startsWith('/api/sign-in') && json?.code === 'TOO_OFTEN') continue;
          expect([path, name, status, json]).toEqual([path, name, expect.toSatisfy((one: number) => one === 400 || one === 422, '400 or 422'), expect.objectContaining({ text: expect.stringContaining(name) })]);
        }
      }
    }
    expect(tried).toBeGreaterThan(400);
  });

  it('is refused among the numbers of the checker too', async () => {
    const path = `/api/sections/${scene().section}/settings`;
    for (const name of Object.keys(EXTRA)) {
      const { status, json } = await scene().send(path, { method: 'PUT', cookie: scene().librarian.cookie, body: { [name]: EXTRA[name] } });
      expect([name, status, json.code]).toEqual([name, 400, 'BAD_SETTING']);
    }
  });

  it('every body is described as an object that takes nothing more', () => {
    const open = routes.flatMap(({ method, path, body }) => placesOf(body).filter(({ shape }) => shape.type === 'object' && shape.properties && shape.additionalProperties !== false).map(({ place }) => `${method} ${path} ${place.join('.')}`));
    expect(open).toEqual([]);
  });
});

describe('asked twice for one thing', () => {
  it('a query that names a thing twice is refused or read as one text, never as a list', async () => {
    for (const path of [`/api/parts/${scene().part}/log?after=0&after=1`, `/api/parts/${scene().part}/export?form=mxl&form=musicxml`, `/api/parts/${scene().part}/print?for=section&for=1o`, `/api/parts/${scene().part}/changes?form[]=csv`]) {
      const { status } = await scene().send(path, { cookie: scene().principal.cookie });
      expect([path, status]).toEqual([path, path.includes('[]') ? 200 : 400]);
    }
  });

  it('a key that is written twice in a body is one key: what stands last, checked like any other', async () => {
    const body = '{"factor":0.9,"shortFourth":true,"factor":"long"}';
    expect((await scene().send('/api/me/hand', { method: 'PUT', cookie: scene().player.cookie, body, headers: { 'content-type': 'application/json' } })).json).toMatchObject({ code: 'BAD_INPUT' });
  });
});
