import { extname, resolve } from 'node:path';
import type { z } from 'zod';
import { Fingerings } from '../../core/print/fingerings.ts';
import { MarginsName } from '../../core/print/margins.ts';
import { PaperName, STAFF } from '../../core/print/paper.ts';
import type { PrintForm } from '../print/order.ts';
import { readArguments, required } from './arguments.ts';
import { BadInput, type Command } from './command.ts';
import { readMarksFile } from './marksFile.ts';
import { printJson } from './output.ts';
import { openScore, partOf } from './scoreFile.ts';
import { writeWhole } from './writeWhole.ts';

const FORMS: Record<string, PrintForm> = { '.pdf': 'pdf', '.svg': 'svg', '.mei': 'mei' };

function choice<Value>(name: string, type: z.ZodType<Value>, said: string, values: readonly string[]): Value {
  const read = type.safeParse(said);
  if (!read.success) throw new BadInput(`--${name} "${said}" is not known. Choose ${values.join(', ')}.`);
  return read.data;
}

/** "part.svg" for page 2 is "part-2.svg". */
const pageName = (out: string, page: number): string => `${out.slice(0, -extname(out).length)}-${page}${extname(out)}`;

export const printing: Command = {
  name: 'print',
  usage: 'FILE --part ID [--marks MARKS.json] [--paper a4|b4|9x12|10x13] [--margins narrow|usual|wide|bound] [--staff MM] [--fingerings all|sparse|none] --out OUT',
  summary: 'Lays a part with its marks on pages for the stand; OUT is .pdf, .svg (a file a page) or .mei by its name.',
  async run(args) {
    const { file, options } = readArguments(printing, args, ['part', 'marks', 'paper', 'margins', 'staff', 'fingerings', 'out']);
    const id = required(printing, options, 'part');
    const out = required(printing, options, 'out');
    const form = FORMS[extname(out).toLowerCase()];
    if (!form) throw new BadInput(`--out "${out}" should end in .pdf, .svg or .mei.`);
    if (resolve(out) === resolve(file)) throw new BadInput(`--out "${out}" is the source itself, which is kept as it is. Choose another name.`);
    const paper = choice('paper', PaperName, options.paper ?? 'a4', PaperName.options);
    const margins = choice('margins', MarginsName, options.margins ?? 'usual', MarginsName.options);
    const fingerings = choice('fingerings', Fingerings, options.fingerings ?? 'all', Fingerings.options);
    const source = await openScore(file);
    const { part } = partOf(source, id);
    const { title, composer, parts } = source.read.score;
    const marks = options.marks ? ((await readMarksFile(options.marks, parts)).get(id) ?? []) : [];
    // The engraver and the faces are read only by this command, not by the others.
    const { printPart } = await import('../print/printPart.ts');
    const printed = await printPart({
      bytes: source.bytes,
      fileName: file,
      part: id,
      stored: part,
      marks: marks.map((mark) => ({ ...mark, seats: mark.seats ?? 'all' })),
      heading: { title, composer, instrument: part.name, seat: '', edition: '' },
      paper,
      margins,
      staff: Number(options.staff ?? STAFF.usual),
      fingerings,
      form,
      at: new Date().toISOString(),
    });
    if (!printed.ok) throw new BadInput(`${file}: ${printed.trouble.text}`);
    const names = printed.files.length > 1 ? printed.files.map((_, i) => pageName(out, i + 1)) : [out];
    for (const [i, { bytes }] of printed.files.entries()) await writeWhole(names[i]!, bytes);
    await printJson({ out: names, paper, pages: printed.pages, turns: printed.turns, warnings: printed.warnings });
    return 0;
  },
};
