import type { LineNote } from '../../core/fingering/line.ts';
import { lineFrom, NotesInput } from '../../core/fingering/notesInput.ts';
import { lineOfPart, pinsOf } from '../../core/fingering/partLine.ts';
import type { Pin } from '../../core/fingering/pin.ts';
import type { InstrumentName, Measure } from '../../core/music/part.ts';
import { pitchName } from '../../core/music/pitch.ts';
import { measureName } from '../../core/check/words.ts';
import { BadInput } from './command.ts';
import { readMarksFile } from './marksFile.ts';
import { jsonOf, openScore, partOf } from './scoreFile.ts';

/** Taken where the part gives no tempo: chosen, not measured. */
const ASSUMED_TEMPO = 90;
/** Faults told at once. */
const TOLD = 20;

/** What is to be fingered, and how its places are called. */
export interface Passage {
  instrument: InstrumentName;
  line: LineNote[];
  pins: Map<string, Pin>;
  tempo: number;
  /** A measure by its ordinal, as the reader knows it. */
  measure(ordinal: number): string;
  /** A note by its id, so that it can be found on the page. */
  note(id: string): string;
}

function noteFault(content: unknown, path: readonly PropertyKey[]): string {
  if (path[0] !== 'notes' || typeof path[1] !== 'number') return path.length ? `"${path.join('.')}"` : '';
  const note = (content as { notes: unknown[] }).notes[path[1]] as { id?: unknown } | null | undefined;
  const id = typeof note?.id === 'string' ? ` ("${note.id}")` : '';
  return `note ${path[1] + 1}${id}${path.length > 2 ? `, "${path.slice(2).join('.')}"` : ''}`;
}

/** Reads NOTES.json. Throws BadInput with every note that cannot be used: its number, its id and what should stand there. */
export async function passageOfNotes(path: string): Promise<Passage> {
  const content = await jsonOf(path);
  const parsed = NotesInput.safeParse(content);
  if (!parsed.success) {
    const faults = parsed.error.issues.map(({ path: place, message }) => `${path}: ${[noteFault(content, place), message].filter(Boolean).join(': ')}.`);
    throw new BadInput(...faults.slice(0, TOLD), ...(faults.length > TOLD ? [`... and ${faults.length - TOLD} more.`] : []), 'Correct the file and try again.');
  }
  const { instrument, tempo, notes } = parsed.data;
  const seen = new Set<string>();
  const twice = notes.flatMap(({ id }, i) => (seen.size === seen.add(id).size ? [`${path}: note ${i + 1} ("${id}"): another note has this id already.`] : []));
  if (twice.length) throw new BadInput(...twice.slice(0, TOLD), 'Give every note an id of its own and try again.');
  const names = new Map(notes.map(({ id, measure }) => [id, `Note ${id} (measure ${measure})`]));
  return { instrument, tempo, ...lineFrom(parsed.data), measure: (ordinal) => `measure ${ordinal}`, note: (id) => names.get(id)! };
}

function rangeOf(text: string | undefined, measures: readonly Measure[]): [number, number] {
  if (text === undefined) return [1, measures.length];
  const range = /^(\d+)(?:-(\d+))?$/.exec(text);
  const [first, last] = [Number(range?.[1]), Number(range?.[2] ?? range?.[1])];
  if (range && first >= 1 && last >= first && last <= measures.length) return [first, last];
  throw new BadInput(`--measures "${text}" should be like 3-8, within 1-${measures.length} (measures counted from the first, whatever is printed).`);
}

export interface FilePassage {
  part: string;
  measures?: string | undefined;
  /** MARKS.json. */
  pins?: string | undefined;
}

/** Reads the passage of a score file, and fingers and strings of MARKS.json as pins. Throws BadInput for what cannot be used. */
export async function passageOfFile(file: string, { part: id, measures, pins }: FilePassage): Promise<Passage> {
  const score = await openScore(file);
  const { part } = partOf(score, id);
  if (part.instrument === null) throw new BadInput(`Part ${part.id} (${part.name}) is not known as a bowed string part. Choose another part; bowline score ${file} lists them.`);
  const range = rangeOf(measures, part.measures);
  const marks = pins === undefined ? [] : ((await readMarksFile(pins, score.read.score.parts)).get(part.id) ?? []);
  const { line, tempo } = lineOfPart(part, ...range);
  const called = (ordinal: number): string => measureName(part.measures[ordinal - 1]!);
  const names = new Map(part.measures.flatMap(({ ordinal, notes }) => notes.map((note) => [note.id, `Note ${note.id} (${called(ordinal)}${note.pitch ? `, ${pitchName(note.pitch)}` : ''})`] as const)));
  return { instrument: part.instrument, line, pins: pinsOf(marks), tempo: tempo ?? ASSUMED_TEMPO, measure: called, note: (note) => names.get(note)! };
}
