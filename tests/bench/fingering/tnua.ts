import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { LineNote } from '../../../core/fingering/line.ts';
import { stepsAround } from '../../../core/fingering/spell.ts';
import { csvRows } from './csv.ts';
import type { Label, Piece } from './pieces.ts';

interface Row extends Label {
  midi: number;
  start: number;
  duration: number;
}

const rowsOf = (path: string): Row[] =>
  csvRows(path).map((row) => ({
    midi: Number(row.pitch),
    start: Number(row.start),
    duration: Number(row.duration),
    string: row.string === '0' ? 0 : 5 - Number(row.string),
    position: Number(row.position),
    finger: Number(row.finger),
  }));

/** For each row of `to` the row of `from` that is the same note, by longest common subsequence. */
function aligned(from: Row[], to: Row[]): (Row | null)[] {
  const same = (a: Row, b: Row): boolean => a.midi === b.midi && Math.abs(a.start - b.start) < 0.02;
  if (from.length === to.length && from.every((row, i) => same(row, to[i]!))) return from;
  const width = to.length + 1;
  const best = new Uint16Array((from.length + 1) * width);
  for (let i = from.length - 1; i >= 0; i -= 1) {
    for (let j = to.length - 1; j >= 0; j -= 1) {
      best[i * width + j] = same(from[i]!, to[j]!) ? best[(i + 1) * width + j + 1]! + 1 : Math.max(best[(i + 1) * width + j]!, best[i * width + j + 1]!);
    }
  }
  const result: (Row | null)[] = to.map(() => null);
  for (let i = 0, j = 0; i < from.length && j < to.length; ) {
    if (same(from[i]!, to[j]!)) result[j++] = from[i++]!;
    else if (best[(i + 1) * width + j]! >= best[i * width + j + 1]!) i += 1;
    else j += 1;
  }
  return result;
}

function commonest(lengths: number[]): number {
  const count = (value: number): number => lengths.filter((other) => other === value).length;
  return lengths.reduce((best, value) => (count(value) > count(best) ? value : best));
}

/** Equal onsets are a chord only where most players take them on neighbouring strings: the files do not say where a measure of one note ends. */
function isChord(players: (Label | null)[][], i: number): boolean {
  const pairs = players.map((labels) => [labels[i - 1], labels[i]] as const).filter(([a, b]) => a && b);
  return pairs.filter(([a, b]) => Math.abs(a!.string - b!.string) === 1).length * 2 > pairs.length;
}

function lineOf(rows: Row[], players: (Label | null)[][]): LineNote[] {
  const steps = stepsAround(rows.map((row) => row.midi));
  const places: { measure: number; chord: boolean }[] = [];
  let measure = 1;
  rows.forEach((row, i) => {
    const before = rows[i - 1];
    const chord = before !== undefined && row.start === before.start && row.midi !== before.midi && isChord(players, i);
    if (before && !chord && row.start <= before.start) measure += 1;
    places.push({ measure, chord });
  });
  const ends = new Map<number, number>();
  rows.forEach((row, i) => ends.set(places[i]!.measure, Math.max(ends.get(places[i]!.measure) ?? 0, row.start + row.duration)));
  const usual = commonest([...ends.values()]);
  const starts = new Map<number, number>();
  let start = 0;
  for (const [number, end] of ends) {
    starts.set(number, start);
    start += number === 1 ? end : Math.max(usual, end);
  }
  return rows.map((row, i) => ({
    id: `n${i}`,
    midi: row.midi,
    step: steps[i]!,
    measure: places[i]!.measure,
    onset: row.start,
    duration: row.duration,
    at: starts.get(places[i]!.measure)! + row.start,
    chord: places[i]!.chord,
    slurred: false,
  }));
}

/** Movements and excerpts of one work share the letters of its name: mozart1 and mozart2_1 are one work. */
const workOf = (piece: string): string => piece.replace(/\d.*$/, '') + (piece.startsWith('bach') || piece.startsWith('beeth') ? piece.match(/\d/)![0] : '');

/** The ten professionals' fingerings, one piece a score. */
export function loadTnua(folder: string): Piece[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.csv'));
  const names = [...new Set(files.map((name) => name.replace(/^vio\d+_|\.csv$/g, '')))].sort();
  return names.map((name) => {
    const all = files.filter((file) => file.endsWith(`_${name}.csv`)).sort().map((file) => rowsOf(join(folder, file)));
    const length = commonest(all.map((rows) => rows.length));
    const score = all.find((rows) => rows.length === length)!;
    const players = all.map((rows) => aligned(rows, score));
    return { name, work: workOf(name), line: lineOf(score, players), players };
  });
}
