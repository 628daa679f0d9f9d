import type { WrittenNote } from './notation.ts';

/** One value of the MusicXML beam element for each beam of a note, outermost first; null where the note carries a flag or no tail. */
export type Beams = string[] | null;

const levels = (note: WrittenNote): number => (note.pitches.length === 0 ? 0 : note.type === 'eighth' ? 1 : note.type === '16th' ? 2 : 0);

/** Beams of one voice of a measure. Notes of one group (`group` ticks long, counted from the barline) share a beam; rests and long notes part it. */
export function beamsOf(notes: WrittenNote[], group: number, offset: number): Beams[] {
  let at = offset;
  const groups = notes.map((note) => {
    const mine = Math.floor(at / group);
    at += note.ticks;
    return mine;
  });
  const joined = (i: number, j: number, level: number): boolean => {
    const a = notes[i], b = notes[j];
    return a !== undefined && b !== undefined && groups[i] === groups[j] && levels(a) >= level && levels(b) >= level;
  };
  return notes.map((note, i) => {
    const beams = Array.from({ length: levels(note) }, (_, k) => {
      const level = k + 1;
      const before = joined(i - 1, i, level), after = joined(i, i + 1, level);
      if (before && after) return 'continue';
      if (after) return 'begin';
      if (before) return 'end';
      return level === 1 ? 'none' : joined(i - 1, i, 1) ? 'backward hook' : 'forward hook';
    });
    return beams.length === 0 || beams[0] === 'none' ? null : beams;
  });
}
