import { byNote, type Finger, type Mark, type MarkValue } from '../music/mark.ts';
import type { Measure, Note } from '../music/part.ts';
import { isFor, type SeatId } from '../music/seat.ts';
import { type ExactTime, compareTimes } from '../music/time.ts';
import { printedMarks } from './printedMarks.ts';

/** What stands on one note for one seat once everything is weighed. */
export interface NoteMarks {
  finger?: Finger;
  substitution?: Finger;
  string?: 1 | 2 | 3 | 4;
  reach?: 'extension' | 'contraction';
  harmonic?: 'natural' | 'artificial';
  bow?: 'up' | 'down';
  /** True while the bow sign is the source's own. */
  bowPrinted?: true;
  /** Quarters after the note begins, earliest first. */
  changes: readonly ExactTime[];
  retake?: true;
  hooked?: true;
  slur?: 'split' | 'join';
}

export const NO_MARKS: NoteMarks = { changes: [] };

/** Seats that see exactly the same marks. */
export interface SeatGroup {
  /** Empty when the part has no seats: then the group stands for whoever plays it. */
  seats: SeatId[];
  marksOn(note: string): NoteMarks;
  /** Notes on which they see other marks than the whole section does. */
  own: ReadonlySet<string>;
}

export interface SeatMarks {
  /** What stands for whoever has no mark of their own. */
  forAll(note: string): NoteMarks;
  groups: SeatGroup[];
}

type Fields = Omit<NoteMarks, 'changes'> & { changes: ExactTime[] };

function rubOut(fields: Fields, value: Extract<MarkValue, { kind: 'none' }>): void {
  if (value.slot === 'change') fields.changes = value.after === undefined ? [] : fields.changes.filter((after) => compareTimes(after, value.after!) !== 0);
  else if (value.slot !== 'text') delete fields[value.slot];
  if (value.slot === 'finger') delete fields.substitution;
}

function lay(fields: Fields, value: MarkValue): void {
  switch (value.kind) {
    case 'finger':
      fields.finger = value.finger;
      if (value.substitution === undefined) delete fields.substitution;
      else fields.substitution = value.substitution;
      return;
    case 'string': fields.string = value.string as 1 | 2 | 3 | 4; return;
    case 'reach': fields.reach = value.reach; return;
    case 'harmonic': fields.harmonic = value.harmonic; return;
    case 'bow':
      fields.bow = value.bow;
      delete fields.bowPrinted;
      return;
    case 'change':
      if (!fields.changes.some((after) => compareTimes(after, value.after) === 0)) fields.changes = [...fields.changes, value.after].sort(compareTimes);
      return;
    case 'retake': fields.retake = true; return;
    case 'hooked': fields.hooked = true; return;
    case 'slur': fields.slur = value.slur; return;
    case 'text': return;
    case 'none': rubOut(fields, value);
  }
}

/** The marks of one note: what is printed, then `values` in order, later ones over earlier ones of their slot. */
export function marksOnNote(note: Note, values: readonly MarkValue[]): NoteMarks {
  const fields: Fields = { changes: [] };
  for (const value of printedMarks(note)) lay(fields, value);
  if (fields.bow) fields.bowPrinted = true;
  for (const value of values) lay(fields, value);
  return fields;
}

/** True when a mark is meant for every one of the `seats`. Example: a mark without seats is. */
export const isForAll = (mark: Mark, seats: readonly SeatId[]): boolean => mark.seats === undefined || mark.seats === 'all' || (seats.length > 0 && seats.every((seat) => isFor(mark.seats!, seat)));

const valueOf = ({ value }: Mark): MarkValue => value;

/**
 * Seats grouped by the marks they see: printed marks, under marks for all, under marks for the seat itself, whichever came later within each.
 * A mark of kind none takes away what stands below it. Front to back; one group when nobody has a mark of their own.
 * Example: one change for "2i" among four seats gives the groups 1o 1i 2o and 2i.
 */
export function seatMarks(part: { measures: readonly Measure[] }, marks: readonly Mark[], seats: readonly SeatId[]): SeatMarks {
  const forAll = byNote(marks.filter((mark) => isForAll(mark, seats)), valueOf);
  const narrow = marks.filter((mark) => !isForAll(mark, seats));
  const notes = new Map<string, Note>();
  const base = new Map<string, NoteMarks>();
  for (const note of part.measures.flatMap((measure) => measure.notes)) {
    notes.set(note.id, note);
    if (note.technical.length || forAll.has(note.id)) base.set(note.id, marksOnNote(note, forAll.get(note.id) ?? []));
  }
  const places = new Map(narrow.map((mark, place) => [mark, place]));
  const members = new Map<string, { seats: SeatId[]; own: Mark[] }>();
  for (const seat of seats) {
    const own = narrow.filter((mark) => isFor(mark.seats!, seat));
    const key = own.map((mark) => places.get(mark)).join();
    const group = members.get(key);
    if (group) group.seats.push(seat);
    else members.set(key, { seats: [seat], own });
  }
  if (!members.size) members.set('', { seats: [], own: [] });
  const onAll = (id: string): NoteMarks => base.get(id) ?? NO_MARKS;
  const groups = [...members.values()].map(({ seats: group, own }): SeatGroup => {
    const overlay = new Map<string, NoteMarks>();
    for (const [id, values] of byNote(own, valueOf)) {
      const note = notes.get(id);
      if (note) overlay.set(id, marksOnNote(note, [...(forAll.get(id) ?? []), ...values]));
    }
    return { seats: group, marksOn: (id) => overlay.get(id) ?? onAll(id), own: new Set(overlay.keys()) };
  });
  return { forAll: onAll, groups };
}
