import { z } from 'zod';
import { Seats } from './seat.ts';
import { canBeWritten, NOT_WRITTEN } from './text.ts';

/** Quarters as a whole number or a reduced fraction, "3/2". */
export const ExactTimeText = z.union([z.number().int().nonnegative(), z.string().regex(/^\d{1,6}\/[1-9]\d{0,5}$/)]);

export const Finger = z.union([z.literal(0), z.literal(1), z.literal(2), z.literal(3), z.literal(4), z.literal('thumb')]);
export type Finger = z.infer<typeof Finger>;

/** What a mark says about its note. One kind each; two marks of one slot on one note exclude each other. */
export const MarkValue = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('finger'), finger: Finger, /** the finger that takes over on the same pitch */ substitution: Finger.optional() }),
  z.strictObject({ kind: z.literal('string'), string: z.int().min(1).max(4) }),
  z.strictObject({ kind: z.literal('reach'), reach: z.enum(['extension', 'contraction']) }),
  z.strictObject({ kind: z.literal('harmonic'), harmonic: z.enum(['natural', 'artificial']) }),
  z.strictObject({ kind: z.literal('bow'), bow: z.enum(['up', 'down']) }),
  /** A bow change inside a slur or a held note, `after` quarters from the note's onset (0 = as the note begins). */
  z.strictObject({ kind: z.literal('change'), after: ExactTimeText }),
  z.strictObject({ kind: z.literal('retake') }),
  z.strictObject({ kind: z.literal('hooked') }),
  /** split: the slur (or tie) ends before this note and begins anew on it; join: the slur goes on from this note to the next. */
  z.strictObject({ kind: z.literal('slur'), slur: z.enum(['split', 'join']) }),
  z.strictObject({ kind: z.literal('text'), text: z.string().trim().min(1).max(60).refine(canBeWritten, NOT_WRITTEN) }),
  /** Rub out what stands in a slot of this note, printed or adopted; of several bow changes the one at `after`, or all where absent. */
  z.strictObject({
    kind: z.literal('none'),
    slot: z.enum(['finger', 'string', 'reach', 'harmonic', 'bow', 'change', 'retake', 'hooked', 'slur', 'text']),
    after: ExactTimeText.optional(),
  }),
]);
export type MarkValue = z.infer<typeof MarkValue>;

/** One mark on one note, for all of the section or for some seats. */
export const Mark = z.strictObject({
  note: z.string().min(1).max(64),
  value: MarkValue,
  /** Narrower than the proposal's seats, where given. */
  seats: Seats.optional(),
});
export type Mark = z.infer<typeof Mark>;

export type Slot = Exclude<MarkValue['kind'], 'none'>;

/** What `keep` takes of each mark, by its note, in order. Example: `byNote(marks, ({ value }) => value)` gives the values on each note. */
export function byNote<Kept>(marks: readonly Mark[], keep: (mark: Mark) => Kept): Map<string, Kept[]> {
  const onNote = new Map<string, Kept[]>();
  for (const mark of marks) {
    const known = onNote.get(mark.note);
    if (known) known.push(keep(mark));
    else onNote.set(mark.note, [keep(mark)]);
  }
  return onNote;
}

/** The place a mark takes on its note. A new mark in a slot supersedes the old one. */
export function slotOf(value: MarkValue): Slot {
  return value.kind === 'none' ? value.slot : value.kind;
}

const BOWING: readonly Slot[] = ['bow', 'change', 'retake', 'hooked', 'slur'];

/** Whether a mark, or what it rubs out, is about the bow: strokes, changes, retakes, hooks and slurs. Example: `isOfTheBow({ kind: 'retake' })`. */
export function isOfTheBow(value: MarkValue): boolean {
  return BOWING.includes(slotOf(value));
}

/** Key of a slot: several bow changes may stand on one long note, each at its own time. Example: a change after 3/2 quarters is "change@3/2". */
export function slotKey(value: MarkValue): string {
  if (value.kind === 'change') return `change@${value.after}`;
  return value.kind === 'none' && value.slot === 'change' && value.after !== undefined ? `change@${value.after}` : slotOf(value);
}

/** True when two marks on one note cannot stand together: one slot, or a change beside "no bow change at all". */
export function excludes(a: MarkValue, b: MarkValue): boolean {
  const [one, other] = [slotKey(a), slotKey(b)];
  return one === other || (slotOf(a) === 'change' && slotOf(b) === 'change' && (one === 'change' || other === 'change'));
}
