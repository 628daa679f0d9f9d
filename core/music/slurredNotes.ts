import type { Part } from './part.ts';

/** Ids of the notes under a slur that began on an earlier note: those after its `from` up to its `to`, in document order. Example: of three slurred notes the last two. */
export function slurredNotes(part: Part): Set<string> {
  const order = part.measures.flatMap((measure) => measure.notes.map((note) => note.id));
  const at = new Map(order.map((id, i) => [id, i]));
  const under = new Set<string>();
  for (const { from, to } of part.slurs) for (let i = at.get(from)! + 1; i <= at.get(to)!; i += 1) under.add(order[i]!);
  return under;
}
