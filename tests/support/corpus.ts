import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { isStringPart, type StringPart } from '../../core/music/part.ts';
import { readScore } from '../../core/musicxml/readScore.ts';
import { openFile } from '../../server/files/openFile.ts';

/** Folder of published scores; tests over it are skipped, visibly, where it is not given. */
export const CORPUS = process.env.CORPUS_DIR;

/** Every score of the corpus, by its path inside the folder of scores. */
export function corpusScores(): string[] {
  if (!CORPUS) return [];
  const root = join(CORPUS, 'scores');
  return readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(musicxml|xml|mxl)$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .toSorted();
}

/** Every score that whole work is done on; every so manieth where a run is to be short (BOWLINE_EVERY). */
export const everySoMany = <Item>(all: readonly Item[]): Item[] => all.filter((_, nth) => nth % Number(process.env.BOWLINE_EVERY ?? 1) === 0);

export function corpusPath(name: string): string {
  return join(CORPUS ?? '', 'scores', name);
}

/** Folders of real editions: not the files that try out a notation program. */
const EDITIONS = ['openscore-orchestra', 'openscore-quartets', 'violin-printed-marks', 'bach-violin-solo'];

/** Scores of real editions, folder by folder. */
export const corpusEditions = (): string[] => EDITIONS.flatMap((folder) => corpusScores().filter((name) => name.startsWith(`${folder}/`)));

/** The string parts of a score of the corpus that have measures; none where it cannot be read. */
export async function stringParts(name: string): Promise<StringPart[]> {
  const opened = await openFile(readFileSync(corpusPath(name)), name);
  const read = opened.ok ? readScore(opened.text) : opened;
  return 'score' in read ? read.score.parts.filter(isStringPart).filter(({ measures }) => measures.length > 0) : [];
}
