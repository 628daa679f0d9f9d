import { stringify } from 'csv-stringify/sync';
import type { Change } from '../../core/agreement/changeList.ts';
import type { Part } from '../../core/music/part.ts';
import { pitchName } from '../../core/music/pitch.ts';
import type { Seats } from '../../core/music/seat.ts';

const COLUMNS = ['measure', 'printed number', 'note', 'what', 'seats', 'who', 'when', 'why', 'standing'] as const;
type Row = Record<(typeof COLUMNS)[number], string>;

const seatWords = (seats: Seats): string => (seats === 'all' ? 'all' : seats.join(' '));

function standing(change: Change): string {
  if (change.superseded) return `replaced by ${change.superseded.name} on ${change.superseded.at.slice(0, 10)}: ${change.superseded.why}`;
  return change.status === 'note gone' ? 'the note is not in the corrected edition' : 'holds';
}

function rowsOf(changes: readonly Change[], part: Part): Row[] {
  const notes = new Map(part.measures.flatMap((measure) => measure.notes.map((note) => [note.id, note] as const)));
  return changes.map((change) => {
    const pitch = notes.get(change.note)?.pitch;
    return {
      measure: String(change.measure),
      'printed number': part.measures[change.measure - 1]?.number ?? '',
      note: pitch ? pitchName(pitch) : '',
      what: change.what,
      seats: seatWords(change.seats),
      who: change.who,
      when: `${change.when.slice(0, 16).replace('T', ' ')} UTC`,
      why: change.why,
      standing: standing(change),
    };
  });
}

/** For a spreadsheet: with a byte order mark so that it reads UTF-8, and with texts that it would take for formulas made plain. */
export function changesAsCsv(changes: readonly Change[], part: Part): string {
  return stringify(rowsOf(changes, part), { header: true, columns: [...COLUMNS], bom: true, escape_formulas: true, record_delimiter: 'windows' });
}

/** For the stand or a message: one line a change. */
export function changesAsText(changes: readonly Change[], part: Part, title: string): string {
  const lines = rowsOf(changes, part).map((row) => {
    const place = row['printed number'] && row['printed number'] !== row.measure ? `m. ${row['printed number']} (measure ${row.measure} of the part)` : `m. ${row.measure}`;
    const seats = row.seats === 'all' ? '' : ` [${row.seats}]`;
    return `${place}  ${row.note ? `${row.note}: ` : ''}${row.what}${seats} - ${row.why} (${row.who}, ${row.when}; ${row.standing})`;
  });
  return `${title}\n${'='.repeat(title.length)}\n${lines.length ? lines.join('\n') : 'Nothing has been inked in.'}\n`;
}
