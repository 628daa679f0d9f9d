import type { LineNote } from '../line.ts';
import type { HandWords } from './handWords.ts';

const LETTERS = 'CDEFGAB';
const NATURAL = [0, 2, 4, 5, 7, 9, 11];

/** A note's letter and alteration, as it is spelled. */
function pitchWords(words: HandWords, { step, midi }: LineNote): string {
  const letter = ((step % 7) + 7) % 7;
  return words.pitch(LETTERS[letter]!, midi - 12 * (Math.floor(step / 7) + 1) - NATURAL[letter]!);
}

/**
 * Names the notes of a stretch of a line so that each can be found: by pitch, by its count where the pitch comes again in its measure, and by measure
 * where the stretch has several; the measure `home` goes without saying. Example: in C B flat C the last note is "the second C".
 */
export function noteNames(words: HandWords, notes: readonly LineNote[], home: number | null = null): (id: string) => string {
  const severalMeasures = new Set(notes.map(({ measure }) => measure)).size > 1;
  const seen = new Map<string, number>();
  const names = new Map(
    notes.map((note) => {
      const pitch = pitchWords(words, note);
      const key = `${note.measure} ${pitch}`;
      seen.set(key, (seen.get(key) ?? 0) + 1);
      return [note.id, words.note(pitch, seen.get(key)!, severalMeasures && note.measure !== home ? words.measure(note.measure) : null)] as const;
    }),
  );
  return (id) => names.get(id) ?? id;
}
