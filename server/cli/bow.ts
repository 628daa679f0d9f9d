import { partBowings } from '../../core/bowing/direction/partBowings.ts';
import { seatMarks } from '../../core/check/seatMarks.ts';
import { CheckSettings } from '../../core/check/settings.ts';
import { instrumentNamed } from '../../core/instruments/instrumentNamed.ts';
import { tempoMap } from '../../core/music/seconds.ts';
import { readArguments, required } from './arguments.ts';
import { BadInput, type Command } from './command.ts';
import { readMarksFile } from './marksFile.ts';
import { printJson } from './output.ts';
import { openScore, partOf } from './scoreFile.ts';

const MOST = 20;

export const bow: Command = {
  name: 'bow',
  usage: 'FILE --part ID [--measures A-B] [--marks MARKS.json] [--best K]',
  summary: 'Suggests bowings for a part, best first: up or down for every bow, why, and the marks that say it.',
  async run(args) {
    const { file, options } = readArguments(bow, args, ['part', 'measures', 'marks', 'best']);
    const score = await openScore(file);
    const { part } = partOf(score, required(bow, options, 'part'));
    if (part.instrument === null) throw new BadInput(`Part ${part.id} (${part.name}) is not known as a bowed string part. Name another part.`);
    const range = /^(\d+)(?:-(\d+))?$/.exec(options.measures ?? `1-${part.measures.length}`);
    const [from, to] = [Number(range?.[1]), Number(range?.[2] ?? range?.[1])];
    if (!range || from < 1 || to < from || to > part.measures.length) throw new BadInput(`--measures should be like 5-12, from 1 to ${part.measures.length}, counted from the first whatever is printed.`);
    const best = Number(options.best ?? 5);
    if (!Number.isInteger(best) || best < 1 || best > MOST) throw new BadInput(`--best should be a whole number from 1 to ${MOST}.`);
    const marks = options.marks === undefined ? [] : ((await readMarksFile(options.marks, score.read.score.parts)).get(part.id) ?? []);
    const settings = CheckSettings.parse({});
    const bowings = partBowings({
      part,
      instrument: instrumentNamed(part.instrument),
      tempo: tempoMap(part, settings.assumedTempo),
      signsOn: seatMarks(part, marks, []).forAll,
      table: settings.bowSeconds,
      assumedDynamic: settings.assumedDynamic,
      measures: { from, to },
      best,
    });
    await printJson({ bowings });
    return 0;
  },
};
