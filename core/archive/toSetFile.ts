import { replay } from '../agreement/replay.ts';
import type { StandingMark } from '../agreement/state.ts';
import { slotKey } from '../music/mark.ts';
import { keptMarks, type KeptPart, type KeptSet } from './keptSet.ts';
import type { ArchivedMark, ArchivedPart, SetFile } from './setFile.ts';

function marksOf(part: KeptPart): ArchivedMark[] {
  const measures = new Map(part.content.measures.flatMap((measure) => measure.notes.map(({ id }) => [id, measure] as const)));
  // Of two marks in one slot of one note the later one is said; they differ in their seats.
  const standing = new Map<string, StandingMark[]>();
  for (const one of replay(part.log).ink) {
    if (one.superseded) continue;
    const key = `${one.mark.note} ${slotKey(one.mark.value)} ${JSON.stringify(one.mark.value)}`;
    standing.set(key, [...(standing.get(key) ?? []), one]);
  }
  return keptMarks(part).map(({ note, value, seats }) => {
    const { inked, why } = standing.get(`${note} ${slotKey(value)} ${JSON.stringify(value)}`)!.at(-1)!;
    const { ordinal, number } = measures.get(note)!;
    return { note, measure: ordinal, number, value, seats, by: inked.name, at: inked.at, why };
  });
}

function archivedPart(part: KeptPart): ArchivedPart {
  const { content, section, seats, log } = part;
  const notes = content.measures.map((measure) => measure.notes.map(({ id }) => id));
  const rows = log.map((row) => ({ ...row, input: (row.input ?? null) as ArchivedPart['log'][number]['input'] }));
  return { id: content.id, name: content.name, section, seats: [...seats], notes, marks: marksOf(part), log: rows };
}

/**
 * A kept set as its `set.json`: marks by note, the whole log, the ids of the notes. The document itself lies beside it. `packed`: the document is a .mxl.
 * Invariant: with the document it can be read back into an equal set. Throws where a log has a gap.
 * Example: `toSetFile(set, false).source.file` is "source.musicxml".
 */
export function toSetFile(set: KeptSet, packed: boolean): SetFile {
  const { id, title, composer, ensemble, conductor, season, keptBy, keptAt, fileName } = set;
  return { format: 'bowline-set', version: 1, id, title, composer, ensemble, conductor, season, keptBy, keptAt, source: { file: packed ? 'source.mxl' : 'source.musicxml', name: fileName }, parts: set.parts.map(archivedPart) };
}
