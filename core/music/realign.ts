import { alignMeasures } from './alignMeasures.ts';
import { alignNotes } from './alignNotes.ts';
import { noteIdAt } from './identity.ts';
import type { Note, Part } from './part.ts';

export interface Realigned {
  part: Part;
  /** Notes (rests among them) that keep their id, are new, are gone. */
  kept: number;
  added: number;
  removed: number;
}

/**
 * Gives the notes of a corrected edition the ids they had before.
 * Measures are paired first (equal content, then what stands between two equal stretches, in order), then notes inside paired measures. A pitch or
 * a length that was corrected keeps its id; a note that has no partner gets an id that neither edition used.
 * Invariants: ids of the result are unique; every kept id belongs to a note of `previous`; kept + added is the number of notes of `next`,
 * kept + removed that of `previous`; realigning a part with itself keeps every id.
 * Example: `realign(sameMusicOneMeasureLonger, stored).removed` is 0.
 */
export function realign(next: Part, previous: Part): Realigned {
  const taken = new Set(previous.measures.flatMap(({ notes }) => notes.map(({ id }) => id)));
  const before = taken.size;
  const renamed = new Map<string, string>();
  let kept = 0;
  let added = 0;
  const partners = alignMeasures(next.measures, previous.measures);
  const measures = next.measures.map((measure, i) => {
    const old = partners[i];
    const pairs = old === undefined ? [] : alignNotes(measure.notes, previous.measures[old]?.notes ?? []);
    const notes = measure.notes.map((note, k): Note => {
      const partner = pairs[k];
      const id = partner?.id ?? freshId(next.id, note, measure.ordinal, taken);
      if (partner) kept++;
      else added++;
      renamed.set(note.id, id);
      return { ...note, id };
    });
    return { ...measure, notes };
  });
  const named = (id: string) => renamed.get(id) ?? id;
  const slurs = next.slurs.map(({ from, to }) => ({ from: named(from), to: named(to) }));
  return { part: { ...next, measures, slurs }, kept, added, removed: before - kept };
}

function freshId(part: string, note: Note, measure: number, taken: Set<string>): string {
  let id = note.id;
  for (let rank = 1_000; taken.has(id); rank++) id = noteIdAt({ part, measure, rest: note.rest === true, grace: note.grace === true, onset: note.onset, rank });
  taken.add(id);
  return id;
}
