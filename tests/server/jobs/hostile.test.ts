import { describe, expect, it } from 'vitest';
import { importScore } from '../../../server/jobs/documents.ts';
import { GOOD, goodArchive, type Hostile, HOSTILE_FILES, HOSTILE_XML } from '../../support/hostileFiles.ts';

const BEAT = 10;
/** What is over sooner has stopped nobody, and too few beats fall into it to count. */
const SHORT = 20 * BEAT;

/** Runs the work beside a ticking main thread and says how much of the time it ticked: 1 is without a pause. */
async function besideTicks<T>(work: () => Promise<T>): Promise<{ result: T; ticking: number }> {
  let ticks = 0;
  const clock = setInterval(() => ticks++, BEAT);
  const begun = performance.now();
  try {
    const result = await work();
    const took = performance.now() - begun;
    return { result, ticking: took < SHORT ? 1 : (ticks * BEAT) / took };
  } finally {
    clearInterval(clock);
  }
}

async function isRefused({ make, code, says, xml }: Hostile): Promise<void> {
  const bytes = await make();
  const { result, ticking } = await besideTicks(() => importScore(bytes, 'upload.mxl'));
  expect(result).toMatchObject({ ok: false, trouble: { code } });
  if (result.ok) return;
  expect(result.trouble.text).toMatch(says);
  if (xml) expect(result.trouble.line).toBeGreaterThan(0);
  // A blocked loop ticks next to never; a busy machine still ticks far more often than this.
  expect(ticking).toBeGreaterThan(0.25);
}

describe('a hostile file is refused with a reason while the server goes on', () => {
  it.each(HOSTILE_XML)('refuses $name at its line', isRefused);
  it.each(HOSTILE_FILES)('refuses $name', isRefused);

  it('names the very line of the end tag that does not fit', async () => {
    const lines = GOOD.split('\n');
    const wrong = GOOD.replace('</step>', '</stop>');
    const answer = await importScore(Buffer.from(wrong), 'upload.musicxml');
    expect(answer).toMatchObject({ trouble: { line: lines.findIndex((line) => line.includes('</step>')) + 1, part: 'P1', measure: '1' } });
  });

  it('puts aside a file that takes more memory than it may have, and lives on', async () => {
    const wide = GOOD.replace('<part-list>', `${'<x/>'.repeat(2_000_000)}<part-list>`);
    const { result, ticking } = await besideTicks(() => importScore(Buffer.from(wide), 'upload.musicxml', { heapMegabytes: 64 }));
    expect(result).toMatchObject({ ok: false, trouble: { code: 'TOO_BIG' } });
    expect(ticking).toBeGreaterThan(0.25);
  });

  it.each([['plain', () => Buffer.from(GOOD)], ['packed', goodArchive]])('still imports a good score afterwards, %s', async (_, make) => {
    const answer = await importScore(make(), 'good');
    expect(answer).toMatchObject({ ok: true, score: { parts: [{ id: 'P1' }] } });
  });
});
