import type { Measure, Note, Part } from './part.ts';

/**
 * A part whose notes and rests bear other ids, its slurs with them. `idOf` is asked once for each, in the order of the document.
 * Example: `withIds(part, ({ id }) => id)` equals `part`.
 */
export function withIds(part: Part, idOf: (note: Note, measure: Measure) => string): Part {
  const renamed = new Map<string, string>();
  const measures = part.measures.map((measure) => {
    const notes = measure.notes.map((note): Note => {
      const id = idOf(note, measure);
      renamed.set(note.id, id);
      return { ...note, id };
    });
    return { ...measure, notes };
  });
  const named = (id: string): string => renamed.get(id) ?? id;
  return { ...part, measures, slurs: part.slurs.map(({ from, to }) => ({ from: named(from), to: named(to) })) };
}
