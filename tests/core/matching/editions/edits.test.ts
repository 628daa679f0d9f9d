import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoScore } from '../../../../server/demo/score/writeScore.ts';
import { openFile } from '../../../../server/files/openFile.ts';
import { chance } from '../../../support/chance.ts';
import { CORPUS, corpusEditions, corpusPath, stringParts } from '../../../support/corpus.ts';
import { changeLength, changePitches, deleteMeasures, type Edit, insertMeasures, swapLengths } from '../../../support/editions/edits.ts';
import { joinMeasures, reExport, renumber, splitMeasure } from '../../../support/editions/rewrites.ts';
import { type PartText, textOfPart, written } from '../../../support/editions/textOfPart.ts';
import { carried, edited, type Outcome, partIn } from '../../../support/editions/trial.ts';

const CHANGES: Record<string, Edit[]> = {
  'measures put in': [insertMeasures],
  'measures taken out': [deleteMeasures],
  'pitches changed': [changePitches, changePitches, changePitches],
  'a length changed': [changeLength],
  'two lengths changed over': [swapLengths],
  'measures put in, pitches changed elsewhere, other barlines, numbers and program': [insertMeasures, changePitches, joinMeasures, splitMeasure, renumber, reExport],
  'measures taken out, a length changed elsewhere, other barlines, numbers and program': [deleteMeasures, changeLength, splitMeasure, renumber, reExport],
};
const REWRITES: Record<string, Edit[]> = {
  'two measures joined': [joinMeasures, joinMeasures],
  'measures divided': [splitMeasure, splitMeasure],
  'other measure numbers': [renumber],
  'another program': [reExport],
};
const ALL = { ...CHANGES, ...REWRITES };

interface Source {
  name: string;
  text: PartText;
}

/** Parts of real editions that can be read as they are, neither tiny nor endless. */
async function corpusSources(): Promise<Source[]> {
  const sources: Source[] = [];
  for (const name of corpusEditions()) {
    const opened = await openFile(readFileSync(corpusPath(name)), name);
    if (!opened.ok) continue;
    for (const part of await stringParts(name)) {
      const notes = part.measures.reduce((sum, measure) => sum + measure.notes.length, 0);
      if (notes < 150 || notes > 1600) continue;
      const text = textOfPart(opened.text, part.id);
      partIn(written(text));
      sources.push({ name: `${name} ${part.id}`, text });
    }
  }
  return sources;
}

interface Tally {
  trials: number;
  marks: number;
  stayed: number;
  had: number;
  listed: number;
}

function tellAll(sources: readonly Source[], trials: number, seed: number) {
  const tallies = new Map<string, Tally>();
  const wrong: string[] = [];
  const missed: string[] = [];
  const names = Object.keys(ALL);
  for (let trial = 0; trial < trials; trial += 1) {
    const one = chance(seed + trial);
    const kind = names[trial % names.length]!;
    const source = one.pick(sources);
    const outcome: Outcome = carried(source.text, edited(source.text, ALL[kind]!, one));
    const tally = tallies.get(kind) ?? { trials: 0, marks: 0, stayed: 0, had: 0, listed: 0 };
    tallies.set(kind, { trials: tally.trials + 1, marks: tally.marks + outcome.marks, stayed: tally.stayed + outcome.stayed, had: tally.had + outcome.had, listed: tally.listed + outcome.marks - outcome.stayed });
    const where = `${trial} ${kind}, ${source.name}:`;
    wrong.push(...outcome.wrong.map((text) => `${where} ${text}`));
    missed.push(...outcome.missed.map((text) => `${where} ${text}`));
    if (kind in REWRITES) {
      const rewritten = [...outcome.why.keys()].filter((why) => why !== 'tied' && why !== 'unison');
      missed.push(...rewritten.map((why) => `${where} rewritten only, yet ${why}`));
    }
  }
  return { tallies, wrong, missed };
}

function toldOf(tallies: Map<string, Tally>): string {
  return [...tallies].map(([kind, { trials, marks, stayed, had, listed }]) => `${kind}: ${trials} edits, ${marks} marks, ${stayed} stayed, ${had} had to, ${listed} listed`).join('\n');
}

describe('marks carried to an edited edition', () => {
  it('stay wherever the music round them is unchanged, on the demo piece, and none comes to stand on another note', () => {
    const score = demoScore();
    const sources = ['P1', 'P2', 'P3'].flatMap((id) => (score.includes(`<part id="${id}"`) ? [{ name: id, text: textOfPart(score, id) }] : []));
    const { tallies, wrong, missed } = tellAll(sources, 110, 1);
    expect(wrong).toEqual([]);
    expect(missed).toEqual([]);
    for (const kind of Object.keys(ALL)) expect(tallies.get(kind)!.had).toBeGreaterThan(0);
    for (const kind of Object.keys(CHANGES)) expect(tallies.get(kind)!.listed).toBeGreaterThan(0);
  });

  it.skipIf(!CORPUS)('stay wherever the music round them is unchanged in a thousand edits of real editions, and none comes to stand on another note', { timeout: 900_000 }, async () => {
    const sources = await corpusSources();
    const { tallies, wrong, missed } = tellAll(sources, Number(process.env.BOWLINE_EDITS ?? 1_000), 100_000);
    console.log(`${sources.length} parts\n${toldOf(tallies)}`);
    expect(wrong).toEqual([]);
    expect(missed).toEqual([]);
  });
});
