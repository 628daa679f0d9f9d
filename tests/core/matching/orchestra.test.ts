import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { playedTogether } from '../../../core/matching/together.ts';
import type { Part } from '../../../core/music/part.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { openFile } from '../../../server/files/openFile.ts';
import { CORPUS, corpusPath } from '../../support/corpus.ts';

const VIOLINS = ['Violin 1', 'Violin 2'] as const;
const LOW = ['Violoncello', 'Contrabass'] as const;

type Sections = typeof VIOLINS | typeof LOW;

/** Read off the two parts printed under each other, note for note: file, parts, first and last measure, notes in unison between them. */
const IN_UNISON: readonly (readonly [file: string, sections: Sections, from: number, to: number, notes: number])[] = [
  ['Bach_Brandenburg3_BWV.1048_3', VIOLINS, 4, 7, 44],
  ['Bach_Brandenburg3_BWV.1048_3', VIOLINS, 12, 14, 25],
  ['Bach_Brandenburg3_BWV.1048_3', VIOLINS, 29, 29, 12],
  ['Beach_Op.32_2', VIOLINS, 44, 47, 30],
  ['Beach_Op.32_2', VIOLINS, 129, 130, 7],
  ['Beach_Op.32_2', VIOLINS, 130, 132, 11],
  ['Beach_Op.32_2', LOW, 28, 32, 12],
  ['Beach_Op.32_2', LOW, 200, 204, 9],
  ['Beethoven_Op.125_1', VIOLINS, 16, 23, 22],
  ['Beethoven_Op.125_1', VIOLINS, 79, 83, 20],
  ['Beethoven_Op.125_1', VIOLINS, 100, 101, 10],
  ['Beethoven_Op.125_1', VIOLINS, 189, 192, 15],
  ['Beethoven_Op.125_1', VIOLINS, 416, 417, 6],
  ['Beethoven_Op.125_1', LOW, 94, 95, 10],
  ['Beethoven_Op.125_1', LOW, 189, 192, 16],
  ['Beethoven_Op.125_1', LOW, 361, 362, 10],
  ['Beethoven_Op.21_3', VIOLINS, 18, 21, 8],
  ['Beethoven_Op.21_3', LOW, 2, 9, 22],
  ['Beethoven_Op.21_3', LOW, 17, 26, 17],
  ['Beethoven_Op.67_2', VIOLINS, 11, 20, 17],
  ['Beethoven_Op.67_2', VIOLINS, 122, 124, 15],
  ['Beethoven_Op.67_2', VIOLINS, 180, 181, 8],
  ['Bruckner_WAB.105_3b_Trio', VIOLINS, 44, 50, 27],
  ['Bruckner_WAB.105_3b_Trio', LOW, 145, 148, 7],
  ['Haydn_104_1', VIOLINS, 1, 2, 8],
  ['Haydn_104_1', VIOLINS, 34, 34, 6],
  ['Haydn_104_1', VIOLINS, 138, 139, 16],
  ['Haydn_104_1', LOW, 1, 8, 33],
  ['Schubert_D.485_1', VIOLINS, 37, 38, 6],
  ['Schubert_D.485_1', VIOLINS, 140, 141, 6],
  ['Schubert_D.485_1', VIOLINS, 199, 200, 6],
  ['Schubert_D.485_1', VIOLINS, 284, 285, 15],
];

/** Read in the same way: alike at a glance, and not in unison. */
const NOT_IN_UNISON: readonly (readonly [why: string, file: string, sections: Sections, from: number, to: number])[] = [
  ['one follows the other by a measure', 'Bach_Brandenburg3_BWV.1048_3', VIOLINS, 1, 3],
  ['one adorns what the other plays plain', 'Bach_Brandenburg3_BWV.1048_3', VIOLINS, 30, 30],
  ['they move against each other in one rhythm', 'Beethoven_Op.125_1', LOW, 93, 93],
  ['one runs while the other repeats, in one rhythm', 'Beethoven_Op.125_1', VIOLINS, 134, 134],
  ['they tremble a third apart', 'Bruckner_WAB.105_3b_Trio', VIOLINS, 107, 113],
  ['they go in thirds', 'Schubert_D.485_1', VIOLINS, 213, 216],
  ['the cellos play alone', 'Haydn_104_1', LOW, 9, 9],
];

const scores = new Map<string, readonly Part[]>();

async function partsOf(file: string, sections: Sections): Promise<[Part, Part]> {
  if (!scores.has(file)) {
    const name = join('openscore-orchestra', `${file}.mxl`);
    const opened = await openFile(readFileSync(corpusPath(name)), name);
    if (!opened.ok) throw new Error(`${file} cannot be opened`);
    const read = readScore(opened.text);
    if (!read.ok) throw new Error(`${file} cannot be read`);
    scores.set(file, read.score.parts);
  }
  const [a, b] = sections.map((section) => scores.get(file)!.find(({ name }) => name === section));
  return [a!, b!];
}

const LEAST = { unison: 6, rhythm: 16 };

describe.skipIf(!CORPUS)('passages of printed scores, compared by hand (needs CORPUS_DIR)', () => {
  afterAll(() => scores.clear());

  it.each(IN_UNISON)('%s: %j are in unison from measure %i to %i, over %i notes', async (file, sections, from, to, notes) => {
    const unisons = playedTogether(...(await partsOf(file, sections)), LEAST).filter(({ likeness }) => likeness === 'unison');
    expect(unisons.map(({ a, notes: pairs }) => [a.from, a.to, pairs.length])).toContainEqual([from, to, notes]);
  }, 120_000);

  it.each(NOT_IN_UNISON)('%s: %s, %j, measures %i to %i, is no unison', async (_, file, sections, from, to) => {
    const unisons = playedTogether(...(await partsOf(file, sections)), LEAST).filter(({ likeness }) => likeness === 'unison');
    expect(unisons.length).toBeGreaterThan(0);
    const inside = unisons.flatMap(({ notes }) => notes).map(([id]) => id);
    const [part] = await partsOf(file, sections);
    const here = new Set(part.measures.slice(from - 1, to).flatMap((measure) => measure.notes.map(({ id }) => id)));
    expect(inside.filter((id) => here.has(id))).toEqual([]);
  }, 120_000);
});
