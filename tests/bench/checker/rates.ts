import { standingCheck } from '../../../core/check/standing/standingCheck.ts';
import { RULES } from '../../../core/check/registry.ts';
import { marked, scores, SEATS } from './marked.ts';
import { CORPUS } from '../../support/corpus.ts';

/** Findings per 100 measures, rule by rule: nobody's marks, and the engine's own. */
if (!CORPUS) throw new Error('Set CORPUS_DIR to the folder that holds scores/.');
const counts = new Map(RULES.map(({ id }) => [id, { bare: 0, marked: 0 }]));
let [parts, measures] = [0, 0];
for await (const { file, parts: ofFile } of scores()) {
  for (const part of ofFile) {
    const others = ofFile.filter((other) => other !== part).map((other) => ({ section: other.name, part: other, marks: [], seats: SEATS }));
    const check = standingCheck({ part, seats: SEATS, settings: {} });
    for (const { rule } of check.findings([], others)) counts.get(rule)!.bare += 1;
    const { marks } = marked(part, (some) => check.findings(some));
    for (const { rule } of check.findings(marks, others)) counts.get(rule)!.marked += 1;
    parts += 1;
    measures += part.measures.length;
  }
  process.stderr.write(`${file}\n`);
}
console.log(`${parts} parts, ${measures} measures; findings in 100 measures: unmarked, with the engine's own marks`);
const rate = (count: number): string => ((100 * count) / measures).toFixed(2).padStart(7);
for (const [rule, { bare, marked: own }] of counts) console.log(`${rule.padEnd(36)}${rate(bare)}${rate(own)}`);
