import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BadInput } from '../../../server/cli/command.ts';
import { readStaggerFile } from '../../../server/cli/staggerFile.ts';
import { instantsOf, playersOf } from '../../core/bowing/stagger/small.ts';

const good = { instants: instantsOf(15, 0.5), duration: 8, players: playersOf(5, 6, 4), start: 'down', end: 'up' };

const folder = mkdtempSync(join(tmpdir(), 'bowline-stagger-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function fileWith(content: unknown): string {
  const path = join(folder, 'PLAN.json');
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

function bowline(...args: string[]): { code: number | null; printed: string; said: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(import.meta.dirname, '../../../server/cli/bowline.mjs'), 'stagger', ...args], { encoding: 'utf8' });
  return { code: status, printed: stdout, said: stderr };
}

describe('bowline stagger', () => {
  it('prints the plan with exactly the agreed keys and ends with 0', () => {
    const { code, printed, said } = bowline(fileWith(good));
    expect(code).toBe(0);
    const plan = JSON.parse(printed) as { feasible: boolean; broken: unknown[]; players: Record<string, unknown>[] };
    expect(Object.keys(plan).sort()).toEqual(['bound', 'broken', 'cost', 'feasible', 'players', 'terms']);
    expect(plan.players.map((player) => Object.keys(player).sort())).toEqual(good.players.map(() => ['changes', 'directions', 'id']));
    expect([plan.feasible, plan.broken, said]).toEqual([true, [], '']);
  });

  it('ends with 1 and the nearest plan when no plan holds every rule', () => {
    const { code, printed } = bowline(fileWith({ ...good, instants: instantsOf(1, 4) }));
    expect(code).toBe(1);
    expect(JSON.parse(printed)).toMatchObject({ feasible: false, broken: [{ rule: 'partners' }, { rule: 'partners' }, { rule: 'crowd', by: 4 }] });
  });

  it('says below five players that staggering hides nothing', () => {
    const { code, said } = bowline(fileWith({ ...good, players: playersOf(4, 6, 4) }));
    expect(code).toBe(0);
    expect(said).toContain('4 players cannot hide a bow change');
  });

  it.each([
    ['no JSON', '{"instants": [', 'This is no JSON'],
    ['a value of the wrong kind', { ...good, duration: 'long' }, 'duration: '],
    ['a missing value deep inside', { ...good, players: [{ ...good.players[0], limit: undefined }] }, 'players[0].limit: '],
    ['instants out of order', { ...good, instants: [good.instants[1], good.instants[0]] }, 'instants[1].time is 0.5 s, not after the 1 s'],
    ['an instant after the end', { ...good, duration: 6 }, 'instants[12].time is 6.5 s, after the end'],
    ['a shift at no instant', { ...good, players: [{ ...good.players[0], shifts: [15] }] }, 'players[0].shifts[0] is 15, but the instants are 0 to 14'],
    ['two players on one seat', { ...good, players: [good.players[0], { ...good.players[0], id: 'other' }] }, 'players[1] has the id or the seat of players[0]'],
    ['a time below 0', { ...good, instants: [{ ...good.instants[0], time: -1 }] }, 'instants[0].time: '],
  ])('says where a file cannot be used and what to do: %s', async (_, content, where) => {
    const path = fileWith(content);
    const fault = await readStaggerFile(path).catch((error: unknown) => error);
    expect(fault).toBeInstanceOf(BadInput);
    expect((fault as BadInput).message).toContain(`${path}: `);
    expect((fault as BadInput).message).toContain(where);
  });

  it('ends with 2 and prints no plan for a file that cannot be used', () => {
    const { code, printed, said } = bowline(fileWith({ ...good, duration: 6 }));
    expect([code, printed]).toEqual([2, '']);
    expect(said).toContain('after the end');
  });

  it('ends with 2 for a file that is not there, or none named', () => {
    const missing = bowline(join(folder, 'missing.json'));
    expect([missing.code, missing.said]).toEqual([2, expect.stringContaining('There is no such file')]);
    const none = bowline();
    expect([none.code, none.said]).toEqual([2, expect.stringContaining('Usage: bowline stagger PLAN.json')]);
  });

  it('reads a good file as it stands', async () => {
    expect(await readStaggerFile(fileWith(good))).toEqual(good);
  });
});
