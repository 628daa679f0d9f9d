import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';

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

export function corpusPath(name: string): string {
  return join(CORPUS ?? '', 'scores', name);
}
