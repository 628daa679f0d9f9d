/** Matching every pair of string parts of whole movements, beside reading their files: `CORPUS_DIR=... npx tsx tests/bench/matching.ts`. */
import { basename } from 'node:path';
import { playedAnywhere } from '../../core/matching/anywhere.ts';
import { playedTogether } from '../../core/matching/together.ts';
import { corpusScores, stringParts } from '../support/corpus.ts';

const TOGETHER = { unison: 6, rhythm: 16 };
const ANYWHERE = { unison: 12, rhythm: 24 };

/** Milliseconds, and what came of it. */
async function timed<Result>(work: () => Result | Promise<Result>): Promise<[milliseconds: number, result: Result]> {
  const start = performance.now();
  const result = await work();
  return [performance.now() - start, result];
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

const sum = { reading: 0, together: 0, anywhere: 0 };
for (const name of corpusScores().filter((file) => file.startsWith('openscore-orchestra'))) {
  const [reading, parts] = await timed(() => stringParts(name));
  const pairs = parts.flatMap((a, i) => parts.slice(i + 1).map((b) => [a, b] as const));
  const [together, runs] = await timed(() => pairs.flatMap(([a, b]) => playedTogether(a, b, TOGETHER)));
  const [anywhere, elsewhere] = await timed(() => [...pairs, ...parts.map((part) => [part, part] as const)].flatMap(([a, b]) => playedAnywhere(a, b, ANYWHERE)));
  sum.reading += reading;
  sum.together += together;
  sum.anywhere += anywhere;
  console.log(
    `${basename(name, '.mxl')}: ${parts.length} string parts, ${parts[0]?.measures.length ?? 0} measures, read in ${reading.toFixed(0)} ms; at the same time ${runs.length} runs, ${percent(together / reading)} of that; anywhere ${elsewhere.length} runs, ${percent(anywhere / reading)}`,
  );
}
console.log(`all: read in ${sum.reading.toFixed(0)} ms; at the same time ${percent(sum.together / sum.reading)}, anywhere ${percent(sum.anywhere / sum.reading)}`);
