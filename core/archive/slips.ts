import type { Mark } from '../music/mark.ts';

/** What one slip may bring: not much more than a section can look at together. Chosen, not measured. */
const MOST_MARKS = 300;
const MOST_MEASURES = 24;
/** Measures without a mark that do not part a slip. */
const BRIDGED = 2;

/** Marks of neighbouring measures, to be laid as one slip. Ordinals. */
export interface SlipMarks {
  from: number;
  to: number;
  marks: Mark[];
}

/**
 * Marks put together to slips: neighbouring measures, with at most two unmarked ones between, up to 24 measures or 300 marks. Marks on notes that `notes` (note id -> measure
 * ordinal) does not have are left out. Order: as the music goes; within a measure as given. Invariants: every other mark is in exactly one slip, and no measure in two.
 * Example: marks in measures 1, 2 and 9 are two slips, 1 to 2 and 9.
 */
export function slipsOf(marks: readonly Mark[], notes: ReadonlyMap<string, number>): SlipMarks[] {
  const byMeasure = new Map<number, Mark[]>();
  for (const mark of marks) {
    const measure = notes.get(mark.note);
    if (measure !== undefined) byMeasure.set(measure, [...(byMeasure.get(measure) ?? []), mark]);
  }
  const slips: SlipMarks[] = [];
  for (const [measure, here] of [...byMeasure].sort(([a], [b]) => a - b)) {
    const last = slips.at(-1);
    const joins = last && measure - last.to <= BRIDGED + 1 && measure - last.from < MOST_MEASURES && last.marks.length + here.length <= MOST_MARKS;
    if (joins) Object.assign(last, { to: measure, marks: [...last.marks, ...here] });
    else slips.push({ from: measure, to: measure, marks: here });
  }
  return slips;
}
