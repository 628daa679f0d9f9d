import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type News, type Place, type Queue, TRIES } from '../../../server/queue/queue.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { inMemory, inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

let database: TestDatabase;
const KINDS: [string, () => Promise<OneEnsemble>][] = [
  ['memory', inMemory],
  ['PostgreSQL', async () => inPostgres((database = await createTestDatabase()))],
];

describe.each(KINDS)('the line in %s', (kept, open) => {
  let store: OneEnsemble;
  let queue: Queue;
  beforeAll(async () => {
    store = await open();
    queue = store.installation.queue;
  });
  afterAll(async () => {
    await store.close();
    if (kept === 'PostgreSQL') await database.drop();
  });

  const place = (ensemble = 'Harbour', kind: Place['kind'] = 'import'): Place => ({ job: randomUUID(), kind, ensemble });
  async function put(...places: Place[]): Promise<void> {
    for (const one of places) await queue.put(one);
  }
  async function takenAll(kind: Place['kind'] = 'import'): Promise<string[]> {
    const taken: string[] = [];
    for (let next = await queue.take(kind); next; next = await queue.take(kind)) {
      taken.push(next.job);
      await queue.end(next);
    }
    return taken;
  }
  let taken: Place | null = null;
  /** One that is back in line may be set back for a moment. */
  const soon = async (): Promise<Place> => {
    await expect.poll(async () => (taken = await queue.take('import')), { timeout: 15_000 }).not.toBeNull();
    return taken!;
  };

  it('gives each out once, first come first served, whoever asks at the same time', async () => {
    const places = Array.from({ length: 8 }, () => place());
    await put(...places);
    const asked = await Promise.all(places.map(() => queue.take('import')));
    expect(asked.map((one) => one!.job).toSorted()).toEqual(places.map(({ job }) => job).toSorted());
    expect(await queue.take('import')).toBeNull();
    for (const one of asked) await queue.end(one!);
    await put(...places.slice(0, 3).map((one) => ({ ...one, job: randomUUID() })));
    expect(await takenAll()).toHaveLength(3);
  });

  it('keeps a line for each kind', async () => {
    const [print, check] = [place('Harbour', 'print'), place('Harbour', 'check')];
    await put(place(), print, check);
    expect(await takenAll('print')).toEqual([print.job]);
    expect(await takenAll('check')).toEqual([check.job]);
    expect(await takenAll()).toHaveLength(1);
  });

  it('ensembles take turns: one with many jobs in line keeps no other waiting', async () => {
    const season = Array.from({ length: 20 }, () => place('Harbour'));
    await put(...season);
    const first = (await queue.take('import'))!;
    const other = place('Lighthouse');
    await put(other);
    expect(await queue.waiting()).toEqual({ import: 20, print: 0, check: 0 });
    expect(await queue.ahead(other)).toBe(0);
    expect(await queue.ahead(season[1]!)).toBe(1);
    expect((await queue.take('import'))!.job).toBe(other.job);
    await queue.end(other);
    await queue.end(first);
    // Who asks again and again takes turns too, and does not push the season back for good.
    const mixed: string[] = [];
    for (let round = 0; round < 4; round++) {
      await put(place('Lighthouse'));
      for (let i = 0; i < 2; i++) {
        const next = (await queue.take('import'))!;
        mixed.push(next.ensemble);
        await queue.end(next);
      }
    }
    expect(mixed.filter((ensemble) => ensemble === 'Harbour')).toHaveLength(4);
    expect((await takenAll()).toSorted()).toEqual(season.slice(5).map(({ job }) => job).toSorted());
  });

  it('what nobody wants any more is not given out, unless it is in hand already', async () => {
    const [wanted, unwanted] = [place(), place()];
    await put(unwanted, wanted);
    await queue.drop(unwanted);
    const next = (await queue.take('import'))!;
    expect(next.job).toBe(wanted.job);
    await queue.drop(next);
    await queue.giveBack(next, 'untried');
    expect((await soon()).job).toBe(wanted.job);
    await queue.end(wanted);
    expect(await takenAll()).toEqual([]);
  });

  it(`one that is given back as tried is given out ${TRIES} times in all, and then given up`, async () => {
    const poor = place('Lighthouse');
    await put(poor);
    for (let time = 0; time < TRIES; time++) {
      expect(await soon()).toEqual(poor);
      await queue.giveBack(poor, 'tried');
    }
    expect(await queue.take('import')).toBeNull();
    const given = await queue.takeGivenUp();
    expect(given).toEqual(poor);
    await queue.end(given!);
    expect(await queue.takeGivenUp()).toBeNull();
  });

  it('one that is given back untried loses nothing by it', async () => {
    const patient = place();
    await put(patient);
    for (let time = 0; time <= TRIES; time++) {
      expect((await soon()).job).toBe(patient.job);
      await queue.giveBack(patient, 'untried');
    }
    expect(await soon()).toEqual(patient);
    await queue.end(patient);
    expect(await queue.takeGivenUp()).toBeNull();
  });

  it('one in the hands of somebody who lives is not taken back', async () => {
    const mine = place();
    await put(mine);
    await queue.take('import');
    await queue.takeBack();
    expect(await queue.take('import')).toBeNull();
    await queue.end(mine);
  });

  it('news reach whoever listens, until they do not listen any more', async () => {
    const heard: News[] = [];
    const unlisten = queue.listen((news) => heard.push(news));
    queue.tell({ what: 'renewed', parts: ['one'] });
    await expect.poll(() => heard, { timeout: 10_000 }).toContainEqual({ what: 'renewed', parts: ['one'] });
    unlisten();
    const others: News[] = [];
    const end = queue.listen((news) => others.push(news));
    queue.tell({ what: 'job', job: 'one' });
    await expect.poll(() => others, { timeout: 10_000 }).toContainEqual({ what: 'job', job: 'one' });
    expect(heard.some(({ what }) => what === 'job')).toBe(false);
    end();
  });
});
