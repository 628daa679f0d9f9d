import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OPERATIONS } from '../../../core/agreement/registry.ts';
import { openHouse, type House } from '../../support/house.ts';
import { inMemory } from '../../support/oneEnsemble.ts';
import { routesOf, shape } from '../../support/routesOf.ts';

let house: House;
beforeAll(async () => (house = await openHouse(await inMemory())));
afterAll(() => house.close());

describe('the description of the HTTP face', () => {
  it('names every route there is, and none that is not', async () => {
    const { paths } = (await house.visitor().get('/api/openapi.json')).json as { paths: Record<string, Record<string, unknown>> };
    const described = Object.entries(paths).flatMap(([path, methods]) => Object.keys(methods).map((method) => `${method} ${shape(path)}`));
    const operations = Object.keys(OPERATIONS).map((name) => `post /api/parts/*/operations/${name}`);
    const api = routesOf(house.app);
    expect(api.length).toBeGreaterThan(15);
    expect([...described].sort()).toEqual([...api.filter((route) => route !== 'post /api/parts/*/operations/*'), ...operations].sort());
  });

  it('says of every body what may be in it', async () => {
    const { paths } = (await house.visitor().get('/api/openapi.json')).json;
    expect(paths['/api/sections/{section}/seating'].put.requestBody.content['application/json'].schema.required).toEqual(['seats', 'principal']);
    expect(paths['/api/programmes/{programme}/works'].post.requestBody.content['multipart/form-data']).toBeDefined();
  });
});
