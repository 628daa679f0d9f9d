import { parseArgs } from 'node:util';
import { z } from 'zod';
import { AIMS, OPEN_STRINGS, type Aim, type OpenStrings } from '../../core/fingering/aims.ts';
import { fingerLine, type FingerLineOptions } from '../../core/fingering/fingerLine.ts';
import type { LineNote } from '../../core/fingering/line.ts';
import { lineFrom, NotesInput } from '../../core/fingering/notesInput.ts';
import { lineOfPart, pinsOf } from '../../core/fingering/partLine.ts';
import type { Pin } from '../../core/fingering/pin.ts';
import { instrumentNamed } from '../../core/instruments/instrumentNamed.ts';
import type { InstrumentName } from '../../core/music/part.ts';
import { BadInput, type Command } from './command.ts';
import { readMarksFile } from './marksFile.ts';
import { printJson } from './output.ts';
import { bytesOf, openScore, partOf } from './scoreFile.ts';

/** Taken where the part gives no tempo: chosen, not measured. */
const ASSUMED_TEMPO = 90;
const MOST = 50;

const Hand = z.strictObject({ factor: z.number().min(0.8).max(1.1).default(1), shortFourth: z.boolean().default(false) });

const OPTIONS = { part: { type: 'string' }, measures: { type: 'string' }, aim: { type: 'string' }, open: { type: 'string' }, best: { type: 'string' }, hand: { type: 'string' }, pins: { type: 'string' }, notes: { type: 'string' } } as const;

async function json<T>(path: string, schema: z.ZodType<T>): Promise<T> {
  let content: unknown;
  try {
    content = JSON.parse(new TextDecoder().decode(await bytesOf(path)));
  } catch (error) {
    if (error instanceof SyntaxError) throw new BadInput(`${path}: This is no JSON (${error.message}). Correct it and try again.`);
    throw error;
  }
  const parsed = schema.safeParse(content);
  if (parsed.success) return parsed.data;
  throw new BadInput(...parsed.error.issues.slice(0, 20).map((issue) => `${path}: ${issue.path.length ? `"${issue.path.join('.')}": ` : ''}${issue.message}.`), 'Correct the file and try again.');
}

interface Passage {
  instrument: InstrumentName;
  line: LineNote[];
  pins: Map<string, Pin>;
  tempo: number;
}

async function passageOfNotes(path: string): Promise<Passage> {
  const input = await json(path, NotesInput);
  return { instrument: input.instrument, tempo: input.tempo, ...lineFrom(input) };
}

async function passageOfFile(file: string, options: { part?: string | undefined; measures?: string | undefined; pins?: string | undefined }): Promise<Passage> {
  if (options.part === undefined) throw new BadInput('--part is missing.', `Usage: bowline finger ${finger.usage}`);
  const score = await openScore(file);
  const { part } = partOf(score, options.part);
  if (part.instrument === null) throw new BadInput(`Part ${part.id} (${part.name}) is not known as a bowed string part.`);
  const range = /^(\d+)(?:-(\d+))?$/.exec(options.measures ?? `1-${part.measures.length}`);
  const [first, last] = [Number(range?.[1]), Number(range?.[2] ?? range?.[1])];
  if (!range || first < 1 || last < first || last > part.measures.length) throw new BadInput(`--measures should be like 5-12, from 1 to ${part.measures.length}, counted from the first whatever is printed.`);
  const marks = options.pins === undefined ? [] : ((await readMarksFile(options.pins, score.read.score.parts)).get(part.id) ?? []);
  const { line, tempo } = lineOfPart(part, first, last);
  return { instrument: part.instrument, line, pins: pinsOf(marks), tempo: tempo ?? ASSUMED_TEMPO };
}

function readOptions(args: string[]) {
  try {
    return parseArgs({ args, options: OPTIONS, allowPositionals: true, strict: true });
  } catch (error) {
    if (error instanceof TypeError) throw new BadInput(error.message, `Usage: bowline finger ${finger.usage}`);
    throw error;
  }
}

export const finger: Command = {
  name: 'finger',
  usage: `FILE --part ID [--measures A-B] [--aim ${AIMS.join('|')}] [--open ${OPEN_STRINGS.join('|')}] [--best K] [--hand HAND.json] [--pins MARKS.json], or --notes NOTES.json`,
  summary: 'Suggests fingerings for a part or a list of notes, best first, and says what the hand does from note to note.',
  async run(args) {
    const { values, positionals } = readOptions(args);
    const aim = values.aim ?? 'usual';
    if (!AIMS.includes(aim as Aim)) throw new BadInput(`--aim "${aim}" is not known; the aims are ${AIMS.join(', ')}.`);
    const open = values.open ?? 'free';
    if (!OPEN_STRINGS.includes(open as OpenStrings)) throw new BadInput(`--open "${open}" is not known; open strings are ${OPEN_STRINGS.join(', ')}.`);
    const best = Number(values.best ?? 5);
    if (!Number.isInteger(best) || best < 1 || best > MOST) throw new BadInput(`--best should be a whole number from 1 to ${MOST}.`);
    const [file] = positionals;
    if ((file === undefined) === (values.notes === undefined) || positionals.length > 1) throw new BadInput('Name one score file, or give --notes NOTES.json.', `Usage: bowline finger ${finger.usage}`);
    const passage = values.notes === undefined ? await passageOfFile(file!, values) : await passageOfNotes(values.notes);
    const options: FingerLineOptions = { pins: passage.pins, aim: aim as Aim, openStrings: open as OpenStrings, best, ...(values.hand === undefined ? {} : { hand: await json(values.hand, Hand) }) };
    const { fingerings, refusals } = fingerLine(instrumentNamed(passage.instrument), passage.line, passage.tempo, options);
    await printJson({ fingerings, refusals });
    for (const { note, text } of refusals) console.error(`Note ${note}: ${text}`);
    return refusals.length > 0 ? 1 : 0;
  },
};
