import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { stepsAround } from '../../../core/fingering/spell.ts';
import { csvRows } from './csv.ts';
import type { Piece } from './pieces.ts';

/** One performer a piece, read off video; artificial harmonics keep the stopped finger. */
export function loadYtvf(folder: string): Piece[] {
  return readdirSync(folder).filter((name) => name.endsWith('.csv')).sort().map((file) => {
    const rows = csvRows(join(folder, file)).filter((row) => row.pitch !== '' && row.string !== '');
    const midi = rows.map((row) => Number(row.pitch));
    const steps = stepsAround(midi);
    const lengths = new Map<number, number>();
    for (const row of rows) lengths.set(Number(row.bars), Math.max(lengths.get(Number(row.bars)) ?? 0, Number(row.start) + Number(row.duration)));
    const sorted = [...lengths.values()].sort((a, b) => a - b);
    const usual = Math.ceil(sorted[sorted.length >> 1]!);
    return {
      name: file.replace('.csv', ''),
      work: file.replace('.csv', ''),
      line: rows.map((row, i) => {
        const before = rows[i - 1];
        const same = before !== undefined && before.bars === row.bars;
        return {
          id: `n${i}`, midi: midi[i]!, step: steps[i]!, measure: Number(row.bars), onset: Number(row.start), duration: Number(row.duration),
          at: (Number(row.bars) - 1) * usual + Number(row.start),
          chord: same && before.start === row.start && before.string !== row.string,
          slurred: same && before.bowing === row.bowing && row.bowing !== '3',
          ...(row.bowing === '1' ? { bow: 'down' as const } : row.bowing === '2' ? { bow: 'up' as const } : {}),
        };
      }),
      players: [rows.map((row) => ({ string: 5 - Number(row.string), position: Number(row.position), finger: Number(row.finger) }))],
    };
  });
}
