import { parseArgs } from 'node:util';
import { z } from 'zod';
import { AIMS, OPEN_STRINGS, type Aim, type OpenStrings } from '../../core/fingering/aims.ts';
import { fingerLine, type FingerLineOptions } from '../../core/fingering/fingerLine.ts';
import type { HandProfile } from '../../core/hand/reach.ts';
import { instrumentNamed } from '../../core/instruments/instrumentNamed.ts';
import { BadInput, type Command } from './command.ts';
import { passageOfFile, passageOfNotes, type Passage } from './fingerPassage.ts';
import { fingeringWords } from './fingerWords.ts';
import { printJson } from './output.ts';
import { jsonOf } from './scoreFile.ts';

const MOST = 50;

const Hand = z.strictObject({ factor: z.number().min(0.8).max(1.1).default(1), shortFourth: z.boolean().default(false) });

const text = { type: 'string' } as const;
const OPTIONS = { part: text, measures: text, aim: text, open: text, best: text, hand: text, pins: text, notes: text, explain: { type: 'boolean' } } as const;

function readOptions(args: string[]) {
  try {
    return parseArgs({ args, options: OPTIONS, allowPositionals: true, strict: true });
  } catch (error) {
    if (error instanceof TypeError) throw new BadInput(error.message, USAGE);
    throw error;
  }
}
type Options = ReturnType<typeof readOptions>['values'];

function oneOf<T extends string>(name: string, given: string | undefined, among: readonly T[], otherwise: T): T {
  if (given === undefined) return otherwise;
  const found = among.find((candidate) => candidate === given);
  if (found === undefined) throw new BadInput(`--${name} "${given}" is not known; choose from ${among.join(', ')}.`);
  return found;
}

async function handOf(path: string): Promise<HandProfile> {
  const parsed = Hand.safeParse(await jsonOf(path));
  if (parsed.success) return parsed.data;
  throw new BadInput(...parsed.error.issues.map((issue) => `${path}: ${issue.path.length ? `"${issue.path.join('.')}": ` : ''}${issue.message}.`), 'A hand is {"factor": 0.8 to 1.1, "shortFourth": true or false}; either may be left out. Correct the file and try again.');
}

async function passageOf(files: readonly string[], options: Options): Promise<Passage> {
  const { notes, part, measures, pins } = options;
  const [file, ...more] = files;
  if (notes !== undefined) {
    if (file !== undefined) throw new BadInput(`Give a score file or --notes, not both; "${file}" is one too many.`, USAGE);
    const idle = (['part', 'measures', 'pins'] as const).filter((name) => options[name] !== undefined);
    if (idle.length) throw new BadInput(`--${idle[0]} belongs to a score file, not to --notes; in NOTES.json a note carries its own "pin".`, USAGE);
    return passageOfNotes(notes);
  }
  if (file === undefined) throw new BadInput('Name one score file, or give --notes NOTES.json.', USAGE);
  if (more.length) throw new BadInput(`One file at a time; "${more[0]}" is one too many.`, USAGE);
  if (part === undefined || part === '') throw new BadInput('--part is missing.', USAGE);
  return passageOfFile(file, { part, measures, pins });
}

export const finger: Command = {
  name: 'finger',
  usage: `FILE --part ID [--measures A-B] [--aim ${AIMS.join('|')}] [--open ${OPEN_STRINGS.join('|')}] [--best K] [--hand HAND.json] [--pins MARKS.json] [--explain], or --notes NOTES.json in place of FILE, --part, --measures and --pins`,
  summary: 'Suggests fingerings for a part or a list of notes, best first, and says what the hand does from note to note.',
  async run(args) {
    const { values, positionals } = readOptions(args);
    const aim = oneOf<Aim>('aim', values.aim, AIMS, 'usual');
    const openStrings = oneOf<OpenStrings>('open', values.open, OPEN_STRINGS, 'free');
    const best = Number(values.best ?? 5);
    if (!Number.isInteger(best) || best < 1 || best > MOST) throw new BadInput(`--best "${values.best}" should be a whole number from 1 to ${MOST}.`);
    const hand = values.hand === undefined ? null : await handOf(values.hand);
    const passage = await passageOf(positionals, values);
    const instrument = instrumentNamed(passage.instrument);
    const options: FingerLineOptions = { pins: passage.pins, aim, openStrings, best, ...(hand === null ? {} : { hand }) };
    const { fingerings, refusals } = fingerLine(instrument, passage.line, passage.tempo, options);
    const played = { instrument, line: passage.line, ...(hand === null ? {} : { hand }) };
    const said = values.explain ? fingeringWords(played, fingerings, passage.tempo, options, passage.measure) : [];
    await printJson({ fingerings: fingerings.map((fingering, i) => (said[i] === undefined ? fingering : { ...fingering, words: said[i] })), refusals });
    for (const { note, text: why } of refusals) console.error(`${passage.note(note)}: ${why}`);
    return refusals.length > 0 ? 1 : 0;
  },
};

const USAGE = `Usage: bowline finger ${finger.usage}`;
