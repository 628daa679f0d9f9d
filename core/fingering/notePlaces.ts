import type { Instrument } from '../instruments/instrument.ts';
import { harmonicPlaces } from './harmonicPlaces.ts';
import { THUMB, type Breadth, type Place } from './frame.ts';
import type { LineNote } from './line.ts';
import { placesOf } from './placesOf.ts';

/** A trill goes up: with the finger after, or from an open string with 1. The last finger has none after it; on the bass 3 stands with 4. */
function leavesFinger(instrument: Instrument, { finger }: Place): boolean {
  return finger === THUMB || finger < (instrument.name === 'double-bass' ? 3 : 4);
}

/**
 * The places of a note with what the page says of it: a harmonic where it is touched, a trill only where a finger is left for it.
 * Empty where it cannot be played so. Example: no place of a trilled note has finger 4.
 */
export function notePlaces(instrument: Instrument, note: LineNote, breadth: Breadth): Place[] {
  if (note.harmonic !== undefined) return harmonicPlaces(instrument, note, breadth);
  const places = placesOf(instrument, note.midi, note.step, breadth);
  return note.trill ? places.filter((place) => leavesFinger(instrument, place)) : places;
}
