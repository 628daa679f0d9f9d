import { stringify } from 'csv-stringify/sync';
import type { Part } from '../../core/music/part.ts';
import { pitchName } from '../../core/music/pitch.ts';

/** For a spreadsheet: with a byte order mark so that it reads UTF-8, and with texts that it would take for formulas made plain. */
export const sheet = (rows: readonly Record<string, string>[], columns: readonly string[]): string =>
  stringify([...rows], { header: true, columns: [...columns], bom: true, escape_formulas: true, record_delimiter: 'windows' });

/** Names the pitch of a note of a part by its id; empty for a rest and for a note the part no longer has. */
export function pitchesOf(part: Part): (note: string) => string {
  const notes = new Map(part.measures.flatMap((measure) => measure.notes.map((note) => [note.id, note] as const)));
  return (id) => {
    const pitch = notes.get(id)?.pitch;
    return pitch ? pitchName(pitch) : '';
  };
}
