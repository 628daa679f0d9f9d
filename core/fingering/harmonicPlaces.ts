import { NATURAL_HARMONICS } from '../hand/harmonics.ts';
import type { Instrument, StringNumber } from '../instruments/instrument.ts';
import { THUMB, type Breadth, type Place } from './frame.ts';
import type { LineNote } from './line.ts';
import { placesOf } from './placesOf.ts';

/** Letters above the open string for semitones above it, as a major scale has them. */
const LETTERS = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6];
const STRINGS: readonly StringNumber[] = [1, 2, 3, 4];
/** Staff step of a key, sharps on the letter below. */
const LETTER_OF_KEY = [0, 0, 1, 1, 2, 3, 3, 4, 4, 5, 5, 6];
const stepOf = (midi: number): number => (Math.floor(midi / 12) - 1) * 7 + LETTER_OF_KEY[midi % 12]!;

/** Places on one string where the note sounds as a natural harmonic, or is written where it is touched; semitones above the open string. */
function touchedAt(above: number): number[] {
  const nodes = NATURAL_HARMONICS.flatMap(({ sounds, touched }) => {
    const at = touched.map(Math.round);
    return Math.round(sounds) === above || at.includes(above) ? (Math.round(sounds) === above ? at : [above]) : [];
  });
  return [...new Set(nodes)].filter((semitones) => semitones > 0);
}

function natural(instrument: Instrument, midi: number): Place[] {
  return STRINGS.flatMap((string) => {
    const open = instrument.openStrings[string - 1]!;
    return touchedAt(midi - open).flatMap((touched) => {
      const step = stepOf(open) + 7 * Math.floor(touched / 12) + LETTERS[touched % 12]!;
      return placesOf(instrument, open + touched, step, 'all').filter((place) => place.string === string && place.finger !== 0 && place.off === 0 && place.respelled === 0).map((place): Place => ({ ...place, harmonic: true }));
    });
  });
}

/** The stopping finger is 1, or the thumb on cello and bass, and 4 (3) is needed a fourth above it (Sametini; cello and bass after common practice). */
function artificial(instrument: Instrument, { midi, step }: LineNote, breadth: Breadth): Place[] {
  const low = instrument.positionsBy === 'semitone' ? THUMB : 1;
  const places = placesOf(instrument, midi, step, breadth).filter(({ finger }) => finger === low);
  return places.length > 0 ? places : placesOf(instrument, midi, step, 'all').filter(({ finger }) => finger === 1);
}

/**
 * The places of a note marked as a harmonic. Natural: wherever the string is touched for the pitch that sounds, or the place the page writes; `above` is
 * then where the finger touches, not what sounds. Artificial: the stopped note under the lowest finger. Model: nodes at k/n of an ideal string.
 * Example: A5 on a violin, natural, is touched in the middle of the A string.
 */
export function harmonicPlaces(instrument: Instrument, note: LineNote, breadth: Breadth): Place[] {
  return note.harmonic === 'artificial' ? artificial(instrument, note, breadth) : natural(instrument, note.midi);
}
