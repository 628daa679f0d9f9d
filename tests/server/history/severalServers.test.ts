import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { lacks } from '../../support/topology/programs.ts';
import { check, counted, GUARANTEES } from './checker/check.ts';
import type { Violation } from './checker/told.ts';
import type { Happened } from './record/happened.ts';
import { readRecord } from './record/record.ts';
import { run } from './several/run.ts';

const SECONDS = 40;
const SEED = Number(process.env.BOWLINE_HISTORY_SEED ?? 4640);
const REDIS = !lacks('redis-server');

/** The short form of `npm run bench:history`. */
describe(`a history of two ensembles on three servers over ${SECONDS} s of faults (seed ${SEED})`, () => {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-several-'));
  let history: Happened[] = [];
  let violations: Violation[] = [];

  beforeAll(async () => {
    const record = join(folder, 'history.jsonl');
    await run({ seed: SEED, seconds: SECONDS, folder, record, servers: 3, workers: 2, redis: REDIS, players: 15, roomfuls: 2, works: 1, open: 2, pause: [60, 300], ahead: 3, blows: [400, 1500], disk: 0 });
    history = readRecord(record);
    violations = check(history);
  }, 400_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('something was written, and much went wrong meanwhile', () => {
    const { acknowledged, rows, refused, faults } = counted(history);
    console.log(`history of several servers, seed ${SEED}: ${acknowledged} operations acknowledged, ${rows} rows, ${refused} refused; ${Object.entries(faults).map(([kind, count]) => `${count} ${kind}`).join(', ')}`);
    expect(acknowledged).toBeGreaterThan(100);
    expect(Object.values(faults).reduce((sum, count) => sum + count, 0)).toBeGreaterThan(3);
  });

  it.skipIf(!REDIS)('Redis was one of those that it happened to', () => {
    expect(history.find((one) => one.k === 'cast')).toMatchObject({ redis: true });
  });

  it.each(GUARANTEES.map(({ id, says }) => [id, says] as const))('%i: %s', (id) => {
    expect(violations.filter(({ guarantee }) => guarantee === id)).toEqual([]);
  });
});
