import type { Change } from '../../core/agreement/changeList.ts';
import type { Part } from '../../core/music/part.ts';
import type { Seats } from '../../core/music/seat.ts';
import { pitchesOf, sheet } from './sheet.ts';

const COLUMNS = ['measure', 'printed number', 'note', 'what', 'seats', 'who', 'when', 'why', 'standing'] as const;
type Row = Record<(typeof COLUMNS)[number], string>;

const seatWords = (seats: Seats): string => (seats === 'all' ? 'all' : seats.join(' '));

function standing(change: Change): string {
  if (change.superseded) return `replaced by ${change.superseded.name} on ${change.superseded.at.slice(0, 10)}: ${change.superseded.why}`;
  return change.status === 'note gone' ? 'the note is not in the corrected edition' : 'holds';
}

function rowsOf(changes: readonly Change[], part: Part): Row[] {
  const pitchOf = pitchesOf(part);
  return changes.map((change) => ({
    measure: String(change.measure),
    'printed number': part.measures[change.measure - 1]?.number ?? '',
    note: pitchOf(change.note),
    what: change.what,
    seats: seatWords(change.seats),
    who: change.who,
    when: `${change.when.slice(0, 16).replace('T', ' ')} UTC`,
    why: change.why,
    standing: standing(change),
  }));
}

/** For a spreadsheet: a line a mark, in the order of the music. */
export function changesAsCsv(changes: readonly Change[], part: Part): string {
  return sheet(rowsOf(changes, part), COLUMNS);
}

const WIDTH = 78;

/** Words in lines no longer than a page is wide; the second and later ones set in. */
function wrapped(text: string, indent: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= WIDTH) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(lines.length ? `${indent}${word}` : word);
  }
  return lines;
}

/** Signs of one decision: laid at the same moment by the same person for the same reason. */
const decisionOf = ({ who, when, why, seats, standing: holds }: Row): string => JSON.stringify([who, when, why, seats, holds]);

const measureWords = (row: Row): string => `m. ${row['printed number'] || row.measure}`;

/** One decision as a paragraph: what and why first, then its signs measure by measure. */
function paragraph(rows: readonly Row[]): string[] {
  const [first] = rows as [Row];
  const [from, to] = [measureWords(first), measureWords(rows.at(-1)!)];
  const head = `${from === to ? from : `${from} to ${to}`}${first.seats === 'all' ? '' : ` [${first.seats}]`}: ${first.why} (${first.who}, ${first.when}${first.standing === 'holds' ? '' : `; ${first.standing}`})`;
  const signs = rows.map((row, i) => `${i === 0 || measureWords(row) !== measureWords(rows[i - 1]!) ? `${measureWords(row)}: ` : ''}${row.note ? `${row.note} ` : ''}${row.what}`);
  return [...wrapped(head, '  '), ...wrapped(`  ${signs.join('; ')}`, '    ')];
}

/** For the folder or a message: a paragraph a decision, in the order of the music. */
export function changesAsText(changes: readonly Change[], part: Part, title: string): string {
  const decisions = new Map<string, Row[]>();
  for (const row of rowsOf(changes, part)) decisions.set(decisionOf(row), [...(decisions.get(decisionOf(row)) ?? []), row]);
  const text = [...decisions.values()].map((rows) => paragraph(rows).join('\n')).join('\n\n');
  return `${title}\n${'='.repeat(title.length)}\n${text || 'Nothing has been inked in.'}\n`;
}
