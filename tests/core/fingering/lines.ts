import { lineFrom, type NotesInput } from '../../../core/fingering/notesInput.ts';
import type { LineNote } from '../../../core/fingering/line.ts';

/** Eighth notes in measures of four quarters; an array of pitches is a chord. */
export function eighths(pitches: (number | number[])[], instrument: NotesInput['instrument'] = 'violin', tempo = 90): LineNote[] {
  const notes = pitches.flatMap((pitch, i) => [pitch].flat().map((midi, k) => ({ id: `n${i}${k > 0 ? `+${k}` : ''}`, pitch: midi, measure: 1 + Math.floor(i / 8), onset: (i % 8) / 2, duration: 0.5 })));
  return lineFrom({ instrument, tempo, notes }).line;
}
