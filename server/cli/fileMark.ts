import type { Mark, MarkValue } from '../../core/music/mark.ts';
import type { Part } from '../../core/music/part.ts';
import type { FileMark } from './marksFile.ts';

function said(value: MarkValue): Partial<FileMark> {
  switch (value.kind) {
    case 'finger':
      return { finger: value.finger, ...(value.substitution === undefined ? {} : { substitution: value.substitution }) };
    case 'string':
      return { string: value.string };
    case 'reach':
      return { reach: value.reach };
    case 'harmonic':
      return { harmonic: value.harmonic };
    case 'bow':
      return { bow: value.bow };
    case 'change':
      return { change: { after: value.after } };
    case 'retake':
      return { retake: true };
    case 'hooked':
      return { hooked: true };
    case 'slur':
      return { slur: value.slur };
    case 'text':
      return { text: value.text };
    case 'none':
      return {};
  }
}

/** Where a note stands, as MARKS.json says it; undefined where the part has no such note. */
export function noteIn(part: Part, id: string): { part: string; measure: number; note: number } | undefined {
  for (const { ordinal, notes } of part.measures) {
    const note = notes.find((one) => one.id === id);
    if (note) return { part: part.id, measure: ordinal, note: note.index };
  }
  return undefined;
}

/** A mark as it stands in MARKS.json: the other way round than `readMarksFile`. undefined where the part has no such note. */
export function fileMark(part: Part, { note, value, seats }: Mark): FileMark | undefined {
  const place = noteIn(part, note);
  return place && { ...place, ...said(value), ...(seats ? { seats } : {}) };
}
