import { beforeAll, describe, expect, it } from 'vitest';
import { NAUGHTY } from '../../support/naughty.ts';
import { signIn } from '../history/library.ts';
import { attacked } from './attacked.ts';
import { addressIn, isFree, placesOf, routesOf, sample, type Route, type Shape } from './described.ts';
import type { Answer } from './scene.ts';

const { scene } = attacked();
let routes: (Route & { body: Shape })[];
/** One person may ask only so often in a minute: more sign-ins of the same. */
const cookies: { librarian: string[]; principal: string[] } = { librarian: [], principal: [] };
const SIGN_INS = 8;
const KEEPING = ['/api/programmes', '/api/people', '/api/parts/{part}/operations/comment', '/api/parts/{part}/errata'];
const SHARE = 6;

beforeAll(async () => {
  routes = (await routesOf(scene())).filter((route): route is (typeof routes)[number] => route.body !== null);
  for (const who of ['librarian', 'principal'] as const) {
    for (let n = 0; n < SIGN_INS; n++) {
      const { link } = (await scene().send(`/api/people/${scene()[who].id}/link`, { method: 'POST', cookie: scene().librarian.cookie })).json as { link: string };
      cookies[who].push((await signIn(scene().address, link)).cookie);
    }
  }
});

const cut = (text: string, { maxLength = Infinity }: Shape): string => (text.length > maxLength ? [...text.trim()].slice(0, Math.floor(maxLength / 2)).join('') : text);
const textsIn = (value: unknown): string[] => (typeof value === 'string' ? [value] : typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : []);

/** Every free text of a body, with naughty ones in them, the nth of the list in the first; and what was written where. */
function written(body: Shape, n: number): { body: unknown; texts: string[] } {
  const texts: string[] = [];
  const made = sample({ ...body, required: Object.keys(body.properties ?? {}).filter((name) => name !== 'protocol' && name !== 'letter') }, (place, shape) => {
    if (!isFree(shape) || place.at(-1) === 'note' || place.at(-1) === 'id' || /^(person|section|principal|part|from|set)$/.test(String(place.at(-1)))) return undefined;
    const text = cut(NAUGHTY[(n + texts.length * 7) % NAUGHTY.length]!, shape);
    texts.push(text);
    return text;
  });
  return { body: made, texts };
}

async function inTurns<T>(all: readonly T[], abreast: number, act: (one: T) => Promise<void>): Promise<void> {
  let next = 0;
  await Promise.all(Array.from({ length: abreast }, async () => {
    while (next < all.length) await act(all[next++]!);
  }));
}

describe('naughty strings', { timeout: 900_000 }, () => {
  const isText = (route: Route & { body: Shape }) => placesOf(route.body).some(({ shape }) => isFree(shape));

  it('in every text of every route and operation: answered, nothing breaks, and what was taken comes back as it was written', async () => {
    const taking = routes.filter(isText);
    expect(taking.length).toBeGreaterThan(12);
    expect(NAUGHTY.length).toBeGreaterThan(500);
    // Where texts are kept all of the list is sent; elsewhere a part of it each, all of it over the routes.
    const tries = taking.flatMap((route, at) => NAUGHTY.flatMap((_, n) => (KEEPING.includes(route.path) || n % SHARE === at % SHARE ? [{ route, n }] : [])));
    const [taken, broken, changed] = [new Map<string, number>(), [] as string[], [] as string[]];
    // One after the other on each address: what comes back of a thing is what was written last.
    const lanes = [...new Set(tries.map(({ route }) => route.path))].map((path) => tries.filter(({ route }) => route.path === path));
    await inTurns(lanes, 4, async (lane) => {
      for (const one of lane) await put(one);
    });
    async function put({ route: { method, path, body: shape }, n }: (typeof tries)[number]): Promise<void> {
      const { body, texts } = written(shape, n);
      const who = cookies[path.includes('/operations/') ? 'principal' : 'librarian'];
      const answer: Answer = await scene().send(addressIn(scene(), path), { method, cookie: who[n % SIGN_INS]!, body });
      if (answer.status >= 500 || (answer.status >= 400 && !answer.json?.text)) broken.push(`${path} ${JSON.stringify(texts)}: ${answer.status} ${answer.text.slice(0, 200)}`);
      if (answer.status !== 200) return;
      taken.set(path, (taken.get(path) ?? 0) + 1);
      const back = new Set(textsIn(answer.json));
      changed.push(...texts.filter((text) => text.trim() && !back.has(text.trim()) && !back.has(text)).map((text) => `${path} ${JSON.stringify(text)}`));
    }
    expect(broken.slice(0, 5)).toEqual([]);
    expect(changed.slice(0, 5)).toEqual([]);
    // Wherever a text can be kept without anything else being there, most of the list was.
    for (const path of KEEPING) expect([path, taken.get(path)]).toEqual([path, expect.toSatisfy((count: number) => count > NAUGHTY.length / 2, 'most of the list')]);
  });

  it('the library is whole afterwards: the shelf and the part’s log are read, every text as it was written', async () => {
    const shelf = (await scene().send('/api/shelf', { cookie: scene().librarian.cookie })).json;
    expect(shelf.programmes.length).toBeGreaterThan(NAUGHTY.length / 2);
    const { entries } = (await scene().send(`/api/parts/${scene().part}/log?after=0`, { cookie: scene().player.cookie })).json;
    const said = new Set(textsIn(entries));
    const kept = NAUGHTY.filter((text) => said.has(text.trim()));
    expect(kept.length).toBeGreaterThan(NAUGHTY.length / 2);
  });

  it('numbers beyond every limit, and values of another kind, are refused on every route', async () => {
    const ODD: unknown[] = [-1, 1e308, 2 ** 53, 2 ** 31, 0.5, '1', true, null, [], {}, [[]], 'x'];
    const broken: string[] = [];
    let tried = 0;
    for (const { method, path, body } of routes) {
      for (const { place, shape } of placesOf(body).filter((one) => one.shape.type && one.place.length)) {
        for (const odd of ODD) {
          const value = sample({ ...body, required: Object.keys(body.properties ?? {}) }, (at, one) => (one === shape && at.join() === place.join() ? odd : undefined));
          const who = cookies[path.includes('/operations/') ? 'principal' : 'librarian'];
          const answer = await scene().send(addressIn(scene(), path), { method, cookie: who[tried++ % SIGN_INS]!, body: value });
          if (answer.status >= 500 || (answer.status >= 400 && !answer.json?.text)) broken.push(`${path} ${place.join('.')} ${JSON.stringify(odd)}: ${answer.status} ${answer.text.slice(0, 120)}`);
        }
      }
    }
    expect(broken).toEqual([]);
    expect(tried).toBeGreaterThan(1000);
  });
});
