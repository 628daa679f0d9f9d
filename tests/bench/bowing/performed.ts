import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { bowEvents } from '../../../core/bowing/events.ts';
import { strokeFacts } from '../../../core/bowing/direction/facts.ts';
import { strokesOf, type Direction } from '../../../core/bowing/strokes.ts';
import type { Note, Part } from '../../../core/music/part.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import { csvRows } from '../fingering/csv.ts';
import type { BowLine } from './lines.ts';

interface Row {
  midi: number;
  bar: number;
  start: number;
  duration: number;
  bowing: string;
}

const CLOSE = 0.02;

/** A note that begins late in a measure and is followed by an earlier one of the same number began in the measure before. */
function rowsOf(path: string): Row[] {
  const rows = csvRows(path).filter(({ pitch }) => pitch !== '').map((row) => ({ midi: Number(row.pitch), bar: Number(row.bars), start: Number(row.start), duration: Number(row.duration), bowing: row.bowing ?? '' }));
  rows.forEach((row, i) => {
    const next = rows[i + 1];
    if (next && next.bar === row.bar && next.start < row.start - CLOSE) row.bar -= 1;
  });
  return rows;
}

function usualLength(rows: readonly Row[]): number {
  const lengths = new Map<number, number>();
  for (const { bar, start, duration } of rows) lengths.set(bar, Math.max(lengths.get(bar) ?? 0, start + Math.min(duration, 1)));
  const sorted = [...lengths.values()].sort((a, b) => a - b);
  return Math.max(1, Math.ceil(sorted[sorted.length >> 1]! - CLOSE));
}

/** Thousandths, so that times stay exact. */
const exactly = (value: number): number | string => (Number.isInteger(value) ? value : `${Math.round(value * 1000)}/1000`);

function partOfRows(rows: readonly Row[]): Part {
  const whole = usualLength(rows);
  const notes: (Note & { bar: number })[] = [];
  rows.forEach((row, i) => {
    const next = rows.slice(i + 1).find((other) => other.bar !== row.bar || Math.abs(other.start - row.start) > CLOSE);
    const room = next ? (next.bar - row.bar) * whole + next.start - row.start : row.duration;
    const duration = room - row.duration < 0.06 && room > 0 ? room : Math.max(0, Math.min(row.duration, room));
    const before = rows[i - 1];
    const chord = before !== undefined && before.bar === row.bar && Math.abs(before.start - row.start) <= CLOSE;
    notes.push({ bar: row.bar, id: `n${i}`, midi: row.midi, onset: exactly(row.start), duration: exactly(duration), voice: '1', index: i, slurs: [], ties: [], technical: [], articulations: [], ornaments: [], dynamic: null, tempo: null, ...(chord ? { chord: true as const } : {}), ...(row.bowing === '3' || row.bowing === '4' ? { pizzicato: true as const } : {}) });
  });
  const last = Math.max(...rows.map(({ bar }) => bar));
  const measures = Array.from({ length: last + 1 }, (_, bar) => ({ ordinal: bar + 1, number: String(bar), start: bar * whole, length: whole, time: { beats: String(whole), beatType: '4' }, fifths: 0, words: [], wedges: [], notes: notes.filter((note) => note.bar === bar) }));
  const slurs: Part['slurs'] = [];
  for (let i = 0; i < rows.length; ) {
    let to = i;
    while (rows[to + 1]?.bowing === rows[i]!.bowing && (rows[to + 1]!.bar - rows[to]!.bar) * whole + rows[to + 1]!.start - rows[to]!.start - rows[to]!.duration < 0.06) to += 1;
    if (to > i) slurs.push({ from: `n${i}`, to: `n${to}` });
    i = to + 1;
  }
  return { id: 'P1', name: 'Violin', instrument: 'violin', transposition: 0, measures, slurs };
}

const DIRECTIONS: Record<string, Direction> = { 1: 'down', 2: 'up' };

/** One performer a piece, read off video: notes of one direction that touch are taken as one bow. */
export function performedLines(folder: string): BowLine[] {
  return readdirSync(folder).filter((name) => name.endsWith('.csv')).sort().map((file) => {
    const rows = rowsOf(join(folder, file));
    const part = partOfRows(rows);
    const voice = bowEvents(part, tempoMap(part, 90))[0]!;
    const facts = strokeFacts(part, strokesOf(voice, () => ({ changes: [] })), 'mf', () => 0);
    return { piece: file.replace('.csv', ''), facts, given: facts.map(({ stroke }) => DIRECTIONS[rows[Number(stroke.pieces[0]!.event.head.id.slice(1))]!.bowing] ?? null) };
  });
}
