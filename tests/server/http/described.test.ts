import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OPERATIONS } from '../../../core/agreement/registry.ts';
import { openHouse, type House } from '../../support/house.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

let house: House;
beforeAll(async () => (house = await openHouse(await inMemory())));
afterAll(() => house.close());

/** Names of parameters differ between the framework and the description; places do not. */
const shape = (path: string) => path.replace(/\{\w+\}|:\w+/g, '*');

describe('the description of the HTTP face', () => {
  it('names every route there is, and none that is not', async () => {
    const { paths } = (await house.visitor().get('/api/openapi.json')).json as { paths: Record<string, Record<string, unknown>> };
    const described = Object.entries(paths).flatMap(([path, methods]) => Object.keys(methods).map((method) => `${method} ${shape(path)}`));
    const operations = Object.keys(OPERATIONS).map((name) => `post /api/parts/*/operations/${name}`);
    const routes = house.app.printRoutes({ commonPrefix: false, includeHooks: false });
    const methods: string[] = [];
    const stack: string[] = [];
    for (const line of routes.split('\n').filter(Boolean)) {
      const depth = line.search(/[^\s│├└─]/) / 4 - 1;
      const [, piece = '', verbs] = /^[\s│├└─]*(\S+)(?: \(([A-Z, ]+)\))?/.exec(line) ?? [];
      stack.length = depth;
      stack[depth] = piece;
      for (const verb of verbs?.split(', ') ?? []) methods.push(`${verb.toLowerCase()} ${shape(stack.join(''))}`);
    }
    const api = methods.filter((route) => route.includes(' /api/') && !route.startsWith('head'));
    expect(api.length).toBeGreaterThan(15);
    expect([...described].sort()).toEqual([...api.filter((route) => route !== 'post /api/parts/*/operations/*'), ...operations].sort());
  });

  it('says of every body what may be in it', async () => {
    const { paths } = (await house.visitor().get('/api/openapi.json')).json;
    expect(paths['/api/sections/{section}/seating'].put.requestBody.content['application/json'].schema.required).toEqual(['seats', 'principal']);
    expect(paths['/api/programmes/{programme}/works'].post.requestBody.content['multipart/form-data']).toBeDefined();
  });
});
