/** A pitch as it is spelled on the page (MusicXML `step`, `alter`, `octave`; octave 4 starts at middle C). */
export interface Pitch {
  step: 'A' | 'B' | 'C' | 'D' | 'E' | 'F' | 'G';
  /** Semitones above the natural letter; quarter tones are halves. */
  alter: number;
  octave: number;
}

const SEMITONES: Record<Pitch['step'], number> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };
const LETTERS = ['C', 'D', 'E', 'F', 'G', 'A', 'B'] as const;

/** MIDI key number of a spelled pitch (60 = middle C); a quarter tone gives a half number. Example: C4 is 60, B sharp 3 is 60. */
export function midiOf(pitch: Pitch): number {
  return 12 * (pitch.octave + 1) + SEMITONES[pitch.step] + pitch.alter;
}

/** Letter names counted from C0, so that a difference is a distance on the staff. Example: C4 is 28, D4 is 29. */
export function staffStep(pitch: Pitch): number {
  return pitch.octave * 7 + LETTERS.indexOf(pitch.step);
}

/** A pitch in words a player reads. Example: `{ step: 'F', alter: 1, octave: 5 }` is "F sharp 5". */
export function pitchName(pitch: Pitch): string {
  const alteration: Record<string, string> = { '-2': ' double flat', '-1': ' flat', '0': '', '1': ' sharp', '2': ' double sharp' };
  return `${pitch.step}${alteration[String(pitch.alter)] ?? ` ${pitch.alter > 0 ? '+' : ''}${pitch.alter}`}${alteration[String(pitch.alter)] === '' ? '' : ' '}${pitch.octave}`;
}

/** Frequency of a MIDI key in equal temperament, A4 = 440 Hz. Example: 69 is 440. */
export const hertzOf = (midi: number): number => 440 * 2 ** ((midi - 69) / 12);
