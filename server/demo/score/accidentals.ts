import type { Pitch } from '../../../core/music/pitch.ts';

const NAMES: Record<number, string> = { [-1]: 'flat', 0: 'natural', 1: 'sharp' };
const SHARPS = ['F', 'C', 'G', 'D', 'A', 'E', 'B'];

/** Which accidentals a reader of the page needs: remembers what each line of the staff means within a measure. */
export class Accidentals {
  #inForce = new Map<string, number>();
  readonly #fifths: number;

  /** @param fifths sharps of the key, 0 to 7 */
  constructor(fifths: number) {
    this.#fifths = fifths;
  }

  newMeasure(): void {
    this.#inForce.clear();
  }

  /** The accidental to print before a note, null for none. A note tied over the barline prints none. */
  before(pitch: Pitch, tied: boolean): string | null {
    const line = `${pitch.step}${pitch.octave}`;
    const now = this.#inForce.get(line) ?? (SHARPS.indexOf(pitch.step) < this.#fifths ? 1 : 0);
    if (tied || now === pitch.alter) return null;
    this.#inForce.set(line, pitch.alter);
    return NAMES[pitch.alter] ?? null;
  }
}
