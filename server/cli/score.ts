import { readArguments } from './arguments.ts';
import type { Command } from './command.ts';
import { printJson } from './output.ts';
import { partCounts } from './partCounts.ts';
import { openScore } from './scoreFile.ts';

export const score: Command = {
  name: 'score',
  usage: 'FILE',
  summary: 'Counts notes, slurs and printed marks, part by part.',
  async run(args) {
    const { file } = readArguments(score, args, []);
    const { read } = await openScore(file);
    await printJson({ parts: read.score.parts.map(partCounts) });
    return 0;
  },
};
