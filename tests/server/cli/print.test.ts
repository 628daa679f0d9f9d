import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { printing } from '../../../server/cli/printing.ts';
import { demoFile } from '../../support/demoFile.ts';
import { readPdf } from '../../support/pdfDrawing.ts';
import { signsOn, staffEdges, staffHeights } from '../../support/printedSigns.ts';

const folder = mkdtempSync(join(tmpdir(), 'bowline-cli-print-'));
const MARKS = join(folder, 'marks.json');
writeFileSync(MARKS, JSON.stringify({ marks: [{ part: 'P1', measure: 2, note: 0, bow: 'down', finger: 3 }, { part: 'P1', measure: 3, note: 0, bow: 'up' }, { part: 'P2', measure: 2, note: 0, bow: 'up' }] }));

interface Outcome {
  code: number;
  out: string;
  said: string;
}

const bowline = (...args: string[]): Promise<Outcome> =>
  new Promise((resolve) => execFile(process.execPath, ['server/cli/bowline.mjs', 'print', ...args], (error, out, said) => resolve({ code: error ? Number(error.code) : 0, out, said })));

describe('bowline print', () => {
  it('writes a PDF and says pages, turns and warnings', async () => {
    const out = join(folder, 'part.pdf');
    const { code, out: answer } = await bowline(demoFile(), '--part', 'P1', '--marks', MARKS, '--paper', 'b4', '--staff', '9', '--out', out);
    expect(code).toBe(0);
    const pages = await readPdf(readFileSync(out));
    expect(JSON.parse(answer)).toMatchObject({ out: [out], paper: 'b4', pages: pages.length, warnings: [expect.stringContaining('more page turns')] });
    expect(JSON.parse(answer).turns[0]).toMatchObject({ page: 1, measure: expect.any(String), seconds: expect.any(Number), kind: expect.stringMatching(/good|hurried|none/) });
    expect(pages[0]!.width).toBeCloseTo(257, 2);
    for (const height of pages.flatMap(staffHeights)) expect(Math.abs(height - 9)).toBeLessThan(0.05);
    expect((await Promise.all(pages.map(signsOn))).flatMap(({ signs }) => signs.map(({ stroke }) => stroke)).sort()).toEqual(['3', 'down', 'up']);
  }, 240_000);

  it('leaves out figures where none are asked for, and keeps bows', async () => {
    const out = join(folder, 'bare.pdf');
    expect((await bowline(demoFile(), '--part', 'P1', '--marks', MARKS, '--fingerings', 'none', '--margins', 'bound', '--out', out)).code).toBe(0);
    const pages = await readPdf(readFileSync(out));
    expect(staffEdges(pages[1]!).left).toBeCloseTo(12, 1);
    expect((await Promise.all(pages.map(signsOn))).flatMap(({ signs }) => signs.map(({ stroke }) => stroke)).sort()).toEqual(['down', 'up']);
  }, 240_000);

  it('writes MEI with the marks in it', async () => {
    const out = join(folder, 'part.mei');
    expect((await bowline(demoFile(), '--part', 'P1', '--marks', MARKS, '--out', out)).code).toBe(0);
    const mei = readFileSync(out, 'utf8');
    expect(mei).toContain('<mei ');
    expect(mei).toMatch(/<fing[^>]*>3<\/fing>|<fing[^>]*>\s*3/);
  }, 240_000);

  it.each([
    [['--part', 'P1'], '--out is missing'],
    [['--part', 'P1', '--out', 'x.doc'], 'should end in .pdf, .svg or .mei'],
    [['--part', 'P9', '--out', 'x.pdf'], 'no part "P9"'],
    [['--part', 'P1', '--paper', 'a3', '--out', 'x.pdf'], 'Choose a4, b4, 9x12, 10x13'],
    [['--part', 'P1', '--margins', 'none', '--out', 'x.pdf'], 'Choose narrow, usual, wide, bound'],
    [['--part', 'P1', '--fingerings', 'some', '--out', 'x.pdf'], 'Choose all, sparse, none'],
    [['--part', 'P1', '--staff', '6', '--out', 'x.pdf'], 'too small for two players'],
    [['--part', 'P1', '--staff', 'big', '--out', 'x.pdf'], 'Ask for 7'],
  ])('%j is turned down in a sentence, and nothing is written', async (args, said) => {
    await expect(printing.run([demoFile(), ...args])).rejects.toThrow(said);
    expect(existsSync('x.pdf')).toBe(false);
  }, 60_000);
});
