import { join } from 'node:path';
import { performedLines } from './performed.ts';
import { printedLines } from './printed.ts';
import { lessonOf, train } from './train.ts';

/** Prints the weights that go, rounded, into core/bowing/direction/weights.ts. */
async function fit(folder: string | undefined): Promise<void> {
  if (!folder) throw new Error('Set CORPUS_DIR to the folder that holds fingering/ytvf and scores.');
  const lines = [...performedLines(join(folder, 'fingering/ytvf')), ...(await printedLines(join(folder, 'scores/violin-printed-marks'))), ...(await printedLines(join(folder, 'scores/openscore-quartets')))];
  for (const [name, weight] of Object.entries(train(lines.map(lessonOf)))) console.log(`${name.padEnd(12)} ${weight.toFixed(2)}`);
}

await fit(process.env.CORPUS_DIR);
