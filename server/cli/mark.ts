import { extname, resolve } from 'node:path';
import { type FileForm, markFile } from '../files/markFile.ts';
import { readArguments, required } from './arguments.ts';
import { BadInput, type Command } from './command.ts';
import { readMarksFile } from './marksFile.ts';
import { printJson } from './output.ts';
import { openScore } from './scoreFile.ts';
import { writeWhole } from './writeWhole.ts';

const FORMS: Record<string, FileForm> = { '.musicxml': 'musicxml', '.xml': 'musicxml', '.mxl': 'mxl' };

export const mark: Command = {
  name: 'mark',
  usage: 'FILE --marks MARKS.json --out OUT',
  summary: 'Writes the score with marks merged in; OUT is .musicxml or .mxl by its name.',
  async run(args) {
    const { file, options } = readArguments(mark, args, ['marks', 'out']);
    const marksPath = required(mark, options, 'marks');
    const out = required(mark, options, 'out');
    const form = FORMS[extname(out).toLowerCase()];
    if (!form) throw new BadInput(`--out "${out}" should end in .musicxml or .mxl.`);
    if (resolve(out) === resolve(file)) throw new BadInput(`--out "${out}" is the source itself, which is kept as it is. Choose another name.`);
    const source = await openScore(file);
    const marks = await readMarksFile(marksPath, source.read.score.parts);
    const made = await markFile(source.bytes, source.file, [...marks].map(([part, list]) => ({ part, marks: list })), 'keep', form);
    if (!made.ok) throw new BadInput(`${file}: ${made.fault.text}`);
    await writeWhole(out, made.bytes);
    await printJson({ out, marks: [...marks.values()].flat().length });
    return 0;
  },
};
