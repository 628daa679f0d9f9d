import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'bowline-finger-'));
afterAll(() => rmSync(folder, { recursive: true }));

function finger(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  return new Promise((resolve) => {
    execFile(process.execPath, ['server/cli/bowline.mjs', 'finger', ...args], { cwd: root, maxBuffer: 1 << 24 }, (error, out, err) => resolve({ code: error ? Number(error.code) : 0, out, err }));
  });
}

function file(content: unknown): string {
  const path = join(folder, `${Math.abs(JSON.stringify(content).length)}.json`);
  writeFileSync(path, JSON.stringify(content));
  return path;
}

const scale = { instrument: 'violin', tempo: 90, notes: [67, 69, 71, 72].map((pitch, i) => ({ id: `n${i}`, pitch, measure: 1, onset: i, duration: 1 })) };

describe('bowline finger --notes', () => {
  it('prints fingerings, best first, with a step for every note', async () => {
    const { code, out } = await finger('--notes', file(scale), '--best', '2');
    const { fingerings, refusals } = JSON.parse(out);
    expect(code).toBe(0);
    expect(refusals).toEqual([]);
    expect(fingerings).toHaveLength(2);
    expect(fingerings[0].cost).toBeLessThanOrEqual(fingerings[1].cost);
    expect(fingerings[0].notes.map((note: { id: string; step: { kind: string } }) => [note.id, typeof note.step.kind])).toEqual(scale.notes.map(({ id }) => [id, 'string']));
  });

  it('names a note that cannot be played, fingers the rest, and ends with 1', async () => {
    const { code, out, err } = await finger('--notes', file({ ...scale, notes: [...scale.notes, { id: 'deep', pitch: 40, measure: 2, onset: 0, duration: 1 }] }));
    expect(code).toBe(1);
    expect(JSON.parse(out).fingerings[0].notes).toHaveLength(4);
    expect(err).toContain('Note deep:');
  });

  it('says what is wrong with the file or the aim, and ends with 2', async () => {
    const broken = await finger('--notes', file({ ...scale, tempo: 'fast' }));
    expect(broken.code).toBe(2);
    expect(broken.err).toContain('"tempo"');
    const aim = await finger('--notes', file(scale), '--aim', 'loudest');
    expect(aim.code).toBe(2);
    expect(aim.err).toContain('smoothest');
  });
});
