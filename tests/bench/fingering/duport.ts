import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { stepsAround } from '../../../core/fingering/spell.ts';
import { csvRows } from './csv.ts';
import type { Label, Piece } from './pieces.ts';

/** Their position number leaves gaps for names that share a place: finger 1 in semitones above the open string. */
const finger1 = (position: number): number => (position <= 2 ? position : position <= 8 ? position - 1 : position - 2);

function labelOf(row: Record<string, string>): Label {
  const finger = row.Finger === '9' ? 5 : Number(row.Finger);
  return { string: Number(row.String), position: finger1(Number(row.Position)), finger, ...(finger === 0 ? {} : { off: Number(row.Position) >= 15 ? 0 : Number(row.Expansion) }) };
}

/** The printed fingerings of the cello studies, one set. Onsets and durations are shares of a measure, taken as of four quarters. */
export function loadDuport(folder: string): Piece[] {
  return readdirSync(folder).filter((name) => name.endsWith('.csv')).sort().map((file) => {
    const rows = csvRows(join(folder, file));
    const midi = rows.map((row) => Number(row.MIDI));
    const steps = stepsAround(midi);
    let measure = 1;
    return {
      name: file.replace('.csv', ''),
      work: file.replace('.csv', ''),
      line: rows.map((row, i) => {
        const before = rows[i - 1];
        const [onset, last] = [4 * Number(row.Onset), before ? 4 * Number(before.Onset) : 0];
        const chord = before !== undefined && onset === last && row.String !== before.String && Number(before.Duration) > 0;
        if (before && !chord && (onset < last || (onset === last && Number(before.Duration) > 0))) measure += 1;
        return { id: `n${i}`, midi: midi[i]!, step: steps[i]!, measure, onset, duration: 4 * Number(row.Duration), at: (measure - 1) * 4 + onset, chord, slurred: false };
      }),
      players: [rows.map(labelOf)],
    };
  });
}
