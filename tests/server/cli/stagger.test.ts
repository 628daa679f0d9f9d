import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { run } from '../../../server/cli/stagger.ts';
import { readStaggerFile } from '../../../server/cli/staggerFile.ts';
import { instantsOf, playersOf } from '../../core/bowing/stagger/small.ts';

const good = { instants: instantsOf(15, 0.5), duration: 8, players: playersOf(5, 6, 4), start: 'down', end: 'up' };

let folder = '';
let printed = '';
let said = '';
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stagger-'));
  [printed, said] = ['', ''];
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => ((printed += String(text)), true));
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => ((said += String(text)), true));
});
afterEach(async () => {
  vi.restoreAllMocks();
  await rm(folder, { recursive: true });
});

async function runOn(content: unknown): Promise<number> {
  const path = join(folder, 'PLAN.json');
  await writeFile(path, typeof content === 'string' ? content : JSON.stringify(content));
  return run([path]);
}

describe('bowline stagger', () => {
  it('prints the plan with exactly the agreed keys and ends with 0', async () => {
    expect(await runOn(good)).toBe(0);
    const plan = JSON.parse(printed) as { feasible: boolean; broken: unknown[]; players: Record<string, unknown>[] };
    expect(Object.keys(plan).sort()).toEqual(['bound', 'broken', 'cost', 'feasible', 'players', 'terms']);
    expect(plan.players.map((player) => Object.keys(player).sort())).toEqual(good.players.map(() => ['changes', 'directions', 'id']));
    expect([plan.feasible, plan.broken, said]).toEqual([true, [], '']);
  });

  it('ends with 1 and the nearest plan when no plan holds every rule', async () => {
    expect(await runOn({ ...good, instants: instantsOf(1, 4) })).toBe(1);
    expect(JSON.parse(printed)).toMatchObject({ feasible: false, broken: [{ rule: 'partners' }, { rule: 'partners' }, { rule: 'crowd', by: 4 }] });
  });

  it('says below five players that staggering hides nothing', async () => {
    expect(await runOn({ ...good, players: playersOf(4, 6, 4) })).toBe(0);
    expect(said).toContain('4 players cannot hide a bow change');
  });

  it.each([
    ['no JSON', '{"instants": [', 'not JSON'],
    ['a value of the wrong kind', { ...good, duration: 'long' }, 'duration: '],
    ['a missing value deep inside', { ...good, players: [{ ...good.players[0], limit: undefined }] }, 'players[0].limit: '],
    ['instants out of order', { ...good, instants: [good.instants[1], good.instants[0]] }, 'instants[1].time is 0.5 s, not after the 1 s'],
    ['an instant after the end', { ...good, duration: 6 }, 'instants[12].time is 6.5 s, after the end'],
    ['a shift at no instant', { ...good, players: [{ ...good.players[0], shifts: [15] }] }, 'players[0].shifts[0] is 15, but the instants are 0 to 14'],
    ['two players on one seat', { ...good, players: [good.players[0], { ...good.players[0], id: 'other' }] }, 'players[1] has the id or the seat of players[0]'],
    ['a time below 0', { ...good, instants: [{ ...good.instants[0], time: -1 }] }, 'instants[0].time: '],
  ])('ends with 2 and says where: %s', async (_, content, where) => {
    expect(await runOn(content)).toBe(2);
    expect(said).toContain(where);
    expect(printed).toBe('');
  });

  it('ends with 2 for a file that is not there, or none named', async () => {
    expect(await run([join(folder, 'missing.json')])).toBe(2);
    expect(await run([])).toBe(2);
    expect(said).toMatch(/could not be read \(ENOENT\)[\s\S]*Name one plan file/);
  });

  it('reads a good file as it stands', () => {
    expect(readStaggerFile(JSON.stringify(good))).toEqual({ problem: good });
  });
});
