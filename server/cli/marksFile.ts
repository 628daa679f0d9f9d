import { z } from 'zod';
import { ExactTimeText, Finger, type Mark, type MarkValue } from '../../core/music/mark.ts';
import type { Part } from '../../core/music/part.ts';
import { Seats } from '../../core/music/seat.ts';
import { BadInput } from './command.ts';
import { jsonOf } from './scoreFile.ts';

const After = z.union([ExactTimeText, z.string().regex(/^\d{1,6}$/).transform(Number)]);

const FileMark = z.strictObject({
  part: z.string(),
  /** Ordinal, from 1. */
  measure: z.int().min(1),
  /** Among the measure's notes; rests not counted; from 0. */
  note: z.int().min(0),
  finger: Finger.optional(),
  substitution: Finger.optional(),
  string: z.int().min(1).max(4).optional(),
  bow: z.enum(['up', 'down']).optional(),
  harmonic: z.union([z.literal(true), z.enum(['natural', 'artificial'])]).optional(),
  reach: z.enum(['extension', 'contraction']).optional(),
  change: z.union([z.literal(true), z.strictObject({ after: After })]).optional(),
  retake: z.literal(true).optional(),
  hooked: z.literal(true).optional(),
  slur: z.enum(['split', 'join']).optional(),
  text: z.string().trim().min(1).max(60).optional(),
  seats: Seats.optional(),
});
export type FileMark = z.infer<typeof FileMark>;

/** Marks by part id, with the note ids of the parts given. */
export type MarksByPart = Map<string, Mark[]>;

/** Reads MARKS.json against the parts of a score. Throws BadInput with every mark that cannot be used: its number, measure and note. */
export async function readMarksFile(path: string, parts: readonly Part[]): Promise<MarksByPart> {
  const content = await jsonOf(path);
  const outer = z.strictObject({ marks: z.array(z.unknown()).max(100_000) }).safeParse(content);
  if (!outer.success) throw new BadInput(`${path}: The file should be {"marks":[...]} and nothing else. ${sentence(outer.error)}`);
  const byPart: MarksByPart = new Map();
  const wrong: string[] = [];
  outer.data.marks.forEach((raw, i) => {
    const found = placed(raw, parts);
    if (typeof found === 'string') return void wrong.push(`${path}: Mark ${i + 1}${where(raw)}: ${found}`);
    byPart.set(found.part, [...(byPart.get(found.part) ?? []), ...found.marks]);
  });
  if (wrong.length) throw new BadInput(...wrong.slice(0, 20), ...(wrong.length > 20 ? [`... and ${wrong.length - 20} more.`] : []), 'Nothing was written. Correct these marks and try again.');
  return byPart;
}

function placed(raw: unknown, parts: readonly Part[]): { part: string; marks: Mark[] } | string {
  const parsed = FileMark.safeParse(raw);
  if (!parsed.success) return sentence(parsed.error);
  const mark = parsed.data;
  const part = parts.find(({ id }) => id === mark.part);
  if (!part) return `the score has no part "${mark.part}"; its parts are ${parts.map(({ id }) => id).join(', ')}.`;
  const measure = part.measures[mark.measure - 1];
  if (!measure) return `part ${part.id} has ${part.measures.length} measures (counted from the first, whatever is printed).`;
  const note = measure.notes.find(({ index }) => index === mark.note);
  if (!note) return `that measure has ${measure.notes.filter(({ rest }) => !rest).length} notes, counted from 0 without rests.`;
  const values = valuesOf(mark);
  if (typeof values === 'string') return values;
  return { part: part.id, marks: values.map((value) => ({ note: note.id, value, ...(mark.seats ? { seats: mark.seats } : {}) })) };
}

function valuesOf(mark: FileMark): MarkValue[] | string {
  if (mark.substitution !== undefined && mark.finger === undefined) return '"substitution" needs the "finger" it takes over from.';
  const values: MarkValue[] = [];
  if (mark.finger !== undefined) values.push({ kind: 'finger', finger: mark.finger, ...(mark.substitution === undefined ? {} : { substitution: mark.substitution }) });
  if (mark.string !== undefined) values.push({ kind: 'string', string: mark.string });
  if (mark.harmonic !== undefined) values.push({ kind: 'harmonic', harmonic: mark.harmonic === true ? 'natural' : mark.harmonic });
  if (mark.bow) values.push({ kind: 'bow', bow: mark.bow });
  if (mark.reach) values.push({ kind: 'reach', reach: mark.reach });
  if (mark.change) values.push({ kind: 'change', after: mark.change === true ? 0 : mark.change.after });
  if (mark.retake) values.push({ kind: 'retake' });
  if (mark.hooked) values.push({ kind: 'hooked' });
  if (mark.slur) values.push({ kind: 'slur', slur: mark.slur });
  if (mark.text) values.push({ kind: 'text', text: mark.text });
  return values.length ? values : 'it says nothing; give it a finger, a string, a bow or another mark.';
}

function where(raw: unknown): string {
  if (typeof raw !== 'object' || raw === null) return '';
  const { measure, note } = raw as Record<string, unknown>;
  return ` (measure ${JSON.stringify(measure) ?? 'missing'}, note ${JSON.stringify(note) ?? 'missing'})`;
}

function sentence(error: z.ZodError): string {
  return error.issues.map((issue) => `${issue.path.length ? `"${issue.path.join('.')}": ` : ''}${issue.message}`).join('; ') + '.';
}
