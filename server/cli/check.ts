import { checkPart } from '../../core/check/checkPart.ts';
import { settingsFault } from '../../core/check/settingsFault.ts';
import { readArguments, required } from './arguments.ts';
import { BadInput, type Command } from './command.ts';
import { readMarksFile } from './marksFile.ts';
import { printJson } from './output.ts';
import { openScore, partOf } from './scoreFile.ts';
import { readSectionFile } from './sectionFile.ts';

export const check: Command = {
  name: 'check',
  usage: 'FILE --part ID [--marks MARKS.json] [--section SECTION.json]',
  summary: 'Lists what the checker finds in a part as marked: the worst and most exposed first.',
  async run(args) {
    const { file, options } = readArguments(check, args, ['part', 'marks', 'section']);
    const score = await openScore(file);
    const { part } = partOf(score, required(check, options, 'part'));
    const marks = options.marks === undefined ? [] : ((await readMarksFile(options.marks, score.read.score.parts)).get(part.id) ?? []);
    const section = await readSectionFile(options.section, marks);
    const instrument = section.instrument ?? part.instrument;
    if (!instrument) throw new BadInput(`Part ${part.id} (${part.name}) is not known as a bowed string part. If it is one, name it in the section file: {"instrument":"violin"}.`);
    const fault = settingsFault(section.settings, instrument);
    if (fault) throw new BadInput(`${options.section}: in "settings", ${fault} Correct it and try again.`);
    const findings = checkPart({ part: { ...part, instrument }, seats: section.seats, marks, settings: section.settings });
    await printJson({ findings });
    return findings.length ? 1 : 0;
  },
};
