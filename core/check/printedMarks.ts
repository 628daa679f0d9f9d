import type { MarkValue } from '../music/mark.ts';
import type { Note } from '../music/part.ts';
import { readMarks } from '../musicxml/readMarks.ts';

/** Slots of which a note can hold one sign; where the source prints several, whose they are or which is meant cannot be told. */
const SINGLE = ['finger', 'string', 'bow'] as const;

/**
 * What the source itself prints on a note and can mean only one thing, in the words of our own marks. Hidden signs and alternative figures are not counted;
 * two figures on one note are those of a double stop or a choice. Source: musicxml-4.
 */
export function printedMarks(note: Note): MarkValue[] {
  if (!note.technical.length) return [];
  const marks = readMarks(note.technical.filter(({ detail }) => detail?.alternate !== 'yes')).map(({ value }) => value);
  const several = SINGLE.filter((slot) => marks.filter(({ kind }) => kind === slot).length > 1);
  return marks.filter(({ kind }) => !several.some((slot) => slot === kind));
}
