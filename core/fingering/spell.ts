const IN_KEY_OF_C = [0, 2, 4, 5, 7, 9, 11];
/** Half the window in which a key is looked for, in notes: chosen, not measured. */
const REACH = 20;
/** Letter (C = 0) of each place on the line of fifths from F = 0: F C G D A E B. */
const LETTER_ON_FIFTHS = [3, 0, 4, 1, 5, 2, 6];

/** Pitch classes of the major scale with `fifths` sharps (negative: flats). */
function scale(fifths: number): boolean[] {
  const has = Array<boolean>(12).fill(false);
  for (const degree of IN_KEY_OF_C) has[(((degree + 7 * fifths) % 12) + 12) % 12] = true;
  return has;
}

const KEYS = Array.from({ length: 12 }, (_, i) => i - 5).map((fifths) => ({ fifths, has: scale(fifths) }));

/** The staff step of a MIDI key in the key with `fifths` sharps: scale notes by their letter, others as the common raised degrees or the lowered seventh. */
function stepIn(fifths: number, midi: number): number {
  for (let place = fifths - 1; place <= fifths + 10; place += 1) {
    const fifth = place - 1;
    if ((((fifth * 7) % 12) + 12) % 12 !== midi % 12) continue;
    const letter = LETTER_ON_FIFTHS[((place % 7) + 7) % 7]!;
    const natural = [0, 2, 4, 5, 7, 9, 11][letter]!;
    return Math.round((midi - 12 - natural) / 12) * 7 + letter;
  }
  throw new RangeError(`Twelve places on the line of fifths hold every key; ${midi} is none of them.`);
}

/**
 * Fifths of the major scale that holds most of the notes around each note (20 either side), for music whose spelling is unknown.
 * Ties go to the key before, then to the fewest accidentals. Result -5 to 6 per note. Example: the notes of D major give 2.
 */
export function keysAround(midi: readonly number[]): number[] {
  const counts = new Int32Array(12);
  let [from, to] = [0, 0];
  let before = 0;
  return midi.map((_, i) => {
    while (to < Math.min(midi.length, i + REACH + 1)) counts[midi[to++]! % 12]! += 1;
    while (from < i - REACH) counts[midi[from++]! % 12]! -= 1;
    let best = { fifths: 0, score: -Infinity };
    for (const { fifths, has } of KEYS) {
      let held = 0;
      for (let pitch = 0; pitch < 12; pitch += 1) if (has[pitch]) held += counts[pitch]!;
      const score = held + (fifths === before ? 0.5 : 0) - Math.abs(fifths) / 100;
      if (score > best.score) best = { fifths, score };
    }
    before = best.fifths;
    return best.fifths;
  });
}

/**
 * Staff steps from C0 for MIDI keys whose spelling is unknown, by the key around each. Model: the scale's own letters; chromatic notes as
 * lowered seventh or raised first, second, fourth, fifth. Example: 66 among the notes of G major is 31, an F.
 */
export function stepsAround(midi: readonly number[]): number[] {
  return keysAround(midi).map((fifths, i) => stepIn(fifths, midi[i]!));
}

/** True where a pitch does not belong to the major scale with `fifths` sharps. */
export function isChromatic(fifths: number, midi: number): boolean {
  return !KEYS[fifths + 5]!.has[midi % 12]!;
}
