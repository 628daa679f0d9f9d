import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'bowline-bow-'));
afterAll(() => rmSync(folder, { recursive: true }));

const note = (step: string) => `<note><pitch><step>${step}</step><octave>5</octave></pitch><duration>1</duration><type>quarter</type></note>`;
const score = join(folder, 'score.musicxml');
writeFileSync(score, `<?xml version="1.0"?><score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Violin</part-name></score-part></part-list><part id="P1"><measure number="0" implicit="yes"><attributes><divisions>1</divisions><time><beats>3</beats><beat-type>4</beat-type></time></attributes>${note('D')}</measure><measure number="1">${note('E')}${note('F')}${note('G')}</measure></part></score-partwise>`);

function bow(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  return new Promise((resolve) => {
    execFile(process.execPath, ['server/cli/bowline.mjs', 'bow', ...args], { cwd: root, maxBuffer: 1 << 24 }, (error, out, err) => resolve({ code: error ? Number(error.code) : 0, out, err }));
  });
}

interface Printed {
  bowings: { cost: number; strokes: { direction: string; reason: string }[]; marks: unknown[]; along: { stroke: number; from: number; to: number }[] }[];
}

describe('bowline bow', () => {
  it('prints bowings, best first, with a direction, a reason and a place on the hair for every bow', async () => {
    const { code, out } = await bow(score, '--part', 'P1', '--best', '3');
    const { bowings } = JSON.parse(out) as Printed;
    expect(code).toBe(0);
    expect(bowings).toHaveLength(3);
    expect(bowings[0]!.strokes.map(({ direction }) => direction)).toEqual(['up', 'down', 'up', 'down']);
    expect(bowings.map(({ cost }) => cost)).toEqual(bowings.map(({ cost }) => cost).sort((a, b) => a - b));
    for (const { strokes, along } of bowings) {
      expect(along.map(({ stroke }) => stroke)).toEqual(strokes.map((_, i) => i));
      for (const { stroke, from, to } of along) expect(Math.sign(to - from)).toBe(strokes[stroke]!.direction === 'down' ? 1 : -1);
    }
  });

  it('keeps what is marked', async () => {
    const marks = join(folder, 'marks.json');
    writeFileSync(marks, JSON.stringify({ marks: [{ part: 'P1', measure: 2, note: 0, bow: 'up' }] }));
    const { out } = await bow(score, '--part', 'P1', '--marks', marks, '--measures', '2', '--best', '1');
    expect((JSON.parse(out) as Printed).bowings[0]!.strokes.map(({ direction }) => direction)).toEqual(['up', 'down', 'up']);
  });

  it('says what is wrong with the measures or the part, and ends with 2', async () => {
    const measures = await bow(score, '--part', 'P1', '--measures', '2-9');
    expect(measures.code).toBe(2);
    expect(measures.err).toContain('from 1 to 2');
    expect((await bow(score, '--part', 'P9')).err).toContain('P1');
  });
});
