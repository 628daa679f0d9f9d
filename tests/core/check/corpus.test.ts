import { describe, expect, it } from 'vitest';
import { checkPart } from '../../../core/check/checkPart.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { RULES } from '../../../core/check/registry.ts';
import type { Part } from '../../../core/music/part.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { CORPUS, corpusEditions, stringParts } from '../../support/corpus.ts';

/** Findings of one rule a player bears in 100 measures of music that nobody has marked. Chosen, not measured. */
const BEARABLE = 2;

interface Checked {
  file: string;
  part: Part;
  findings: Finding[];
}

const checked: Checked[] = [];

/** Findings of a rule in 100 measures, to two places. */
function per100(rule: string, parts: readonly Checked[]): number {
  const measures = parts.reduce((sum, { part }) => sum + part.measures.length, 0);
  return Math.round((parts.flatMap(({ findings }) => findings).filter((finding) => finding.rule === rule).length * 10_000) / measures) / 100;
}

describe.skipIf(!CORPUS)('real parts that nobody has marked (needs CORPUS_DIR)', () => {
  it('can be read and checked', async () => {
    for (const file of corpusEditions()) {
      for (const part of await stringParts(file)) checked.push({ file, part, findings: checkPart({ part, seats: seatsFor(12), marks: [], settings: {} }) });
    }
    expect(checked.length).toBeGreaterThan(80);
  }, 300_000);

  it(`give at most ${BEARABLE} findings of a rule in 100 measures, over all of them`, () => {
    console.log(`${checked.length} parts; findings in 100 measures:`, Object.fromEntries(RULES.map(({ id }) => [id, per100(id, checked)])));
    expect(RULES.filter(({ id }) => per100(id, checked) > BEARABLE).map(({ id }) => id)).toEqual([]);
  });

  it(`give at most ${BEARABLE} of a rule in 100 measures in every part of an orchestral score`, () => {
    const orchestral = checked.filter(({ file }) => file.startsWith('openscore-orchestra/'));
    expect(orchestral.length).toBeGreaterThan(20);
    expect(orchestral.flatMap((one) => RULES.filter(({ id }) => per100(id, [one]) > BEARABLE).map(({ id }) => `${one.file} ${one.part.name} ${id} ${per100(id, [one])}`))).toEqual([]);
  });

  it('are hardly ever said to be impossible, once in 2,000 measures at most, and never by rules about desks or the section', () => {
    const impossible = checked.flatMap(({ findings }) => findings).filter(({ severity }) => severity === 'cannotPlay');
    expect(impossible.length / checked.reduce((sum, { part }) => sum + part.measures.length, 0)).toBeLessThan(1 / 2000);
    expect(impossible.filter(({ rule }) => /^(desk|section)\//.test(rule))).toEqual([]);
  });
});
