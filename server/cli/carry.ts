import { resolve } from 'node:path';
import { carryMarks, type LostMark } from '../../core/matching/editions/carryMarks.ts';
import { samePart } from '../../core/matching/editions/samePart.ts';
import { WHY_NOT_CARRIED } from '../../core/matching/editions/whyWords.ts';
import type { Part } from '../../core/music/part.ts';
import { readTwoFiles, required } from './arguments.ts';
import { BadInput, type Command } from './command.ts';
import { fileMark, noteIn } from './fileMark.ts';
import { type FileMark, readMarksFile } from './marksFile.ts';
import { printJson } from './output.ts';
import { openScore } from './scoreFile.ts';
import { writeWhole } from './writeWhole.ts';

export const carry: Command = {
  name: 'carry',
  usage: 'OLD NEW --marks MARKS.json --out MARKS2.json',
  summary: 'Carries marks from one edition to another where the music is the same; prints what was kept, and every mark that was not with its measure and why.',
  async run(args) {
    const { files, options } = readTwoFiles(carry, args, ['marks', 'out']);
    const marksPath = required(carry, options, 'marks');
    const out = required(carry, options, 'out');
    if ([marksPath, ...files].some((path) => resolve(path) === resolve(out))) throw new BadInput(`--out "${out}" is one of the files it is made from, which are kept as they are. Choose another name.`);
    const [old, now] = [await openScore(files[0]), await openScore(files[1])];
    const { parts } = now.read.score;
    const marks: FileMark[] = [];
    const lost: unknown[] = [];
    const changed: unknown[] = [];
    for (const [id, list] of await readMarksFile(marksPath, old.read.score.parts)) {
      const older = old.read.score.parts.find((part) => part.id === id)!;
      const newer = samePart(older, parts);
      if (!newer) throw new BadInput(`${files[1]}: There is no part "${older.name}" (${id}); its parts are ${parts.map((part) => `${part.name} (${part.id})`).join(', ')}. Nothing was written.`);
      const told = carryMarks(older, newer, list);
      marks.push(...told.kept.map((mark) => fileMark(newer, mark)!));
      lost.push(...told.lost.map((one) => listed(older, newer, one)));
      changed.push(...told.changed.map((place) => ({ part: id, ...place })));
    }
    await writeWhole(out, new TextEncoder().encode(`${JSON.stringify({ marks }, null, 1)}\n`));
    await printJson({ out, kept: marks.length, lost, changed });
    return lost.length ? 1 : 0;
  },
};

function listed(older: Part, newer: Part, { mark, why, maybe }: LostMark) {
  return { mark: fileMark(older, mark), why, text: WHY_NOT_CARRIED[why], maybe: maybe && noteIn(newer, maybe.note) };
}
