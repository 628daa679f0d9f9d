import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inferDirections } from '../../../../core/bowing/direction/inferDirections.ts';
import { CORPUS } from '../../../support/corpus.ts';
import { performedLines } from '../../../bench/bowing/performed.ts';
import { printedLines } from '../../../bench/bowing/printed.ts';

describe.skipIf(!CORPUS)('bowings of published parts (needs CORPUS_DIR)', () => {
  it('every printed sign is kept', async () => {
    const lines = await printedLines(join(CORPUS!, 'scores/violin-printed-marks'));
    expect(lines.length).toBeGreaterThan(5);
    for (const { facts, given } of lines) {
      const pinned = facts.map((own, i) => ({ ...own, stroke: { ...own.stroke, direction: given[i]! } }));
      const { strokes } = inferDirections(pinned, 1)[0]!;
      expect(given.filter((way, i) => way !== null && strokes[i]!.direction !== way)).toEqual([]);
    }
  });

  it('bowings of performers are met on nine bows in ten', () => {
    let [met, all] = [0, 0];
    for (const { facts, given } of performedLines(join(CORPUS!, 'fingering/ytvf'))) {
      const { strokes } = inferDirections(facts.map((own) => ({ ...own, stroke: { ...own.stroke, direction: null } })), 1)[0]!;
      given.forEach((way, i) => {
        if (way === null) return;
        all += 1;
        if (strokes[i]!.direction === way) met += 1;
      });
    }
    expect(met / all).toBeGreaterThan(0.9);
  });
});
