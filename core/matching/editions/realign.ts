import { noteIdAt } from '../../music/identity.ts';
import type { Note, Part } from '../../music/part.ts';
import { withIds } from '../../music/withIds.ts';
import type { Apart } from './editionsApart.ts';
import { editionsApart } from './editionsApart.ts';
import { fatesOf } from './fates.ts';
import { sameRests } from './sameRests.ts';

export interface Realigned {
  part: Part;
  /** Notes (rests among them) that keep their id, are new, are gone. */
  kept: number;
  added: number;
  removed: number;
}

/**
 * Gives the notes of a corrected edition the ids they had before, exactly where `fatesOf` calls them the same; a rest where it stands as far after a note that is.
 * Any other note gets an id that neither edition used; with a `generation` of its own for every edition, no edition ever used it, so that what was said of a
 * note that is gone can never fall on another one.
 * Invariants: ids of the result are unique; every kept id belongs to a note of `previous` that says the same; kept + added is the number of notes of `next`,
 * kept + removed that of `previous`; realigning a part with itself keeps every id.
 * Example: `realign(sameMusicOtherBarlines, stored).kept` counts every note that is not newly tied.
 */
export function realign(next: Part, previous: Part, generation = 1, apart: Apart = editionsApart(previous, next)): Realigned {
  const old = new Map<string, string>(sameRests(apart, previous, next));
  for (const [id, { note, why }] of fatesOf(apart)) if (why === null) old.set(note!, id);
  const taken = new Set(previous.measures.flatMap(({ notes }) => notes.map(({ id }) => id)));
  const before = taken.size;
  const part = withIds(next, (note, { ordinal }) => old.get(note.id) ?? freshId(next.id, note, ordinal, generation, taken));
  const notes = next.measures.reduce((sum, measure) => sum + measure.notes.length, 0);
  return { part, kept: old.size, added: notes - old.size, removed: before - old.size };
}

function freshId(part: string, note: Note, measure: number, generation: number, taken: Set<string>): string {
  for (let rank = generation * 1_000; ; rank += 1) {
    const id = noteIdAt({ part, measure, rest: note.rest === true, grace: note.grace === true, onset: note.onset, rank });
    if (taken.has(id)) continue;
    taken.add(id);
    return id;
  }
}
