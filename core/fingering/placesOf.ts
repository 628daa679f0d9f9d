import type { Instrument } from '../instruments/instrument.ts';
import { bassPlaces } from './bassPlaces.ts';
import { celloPlaces } from './celloPlaces.ts';
import type { Breadth, Place } from './frame.ts';
import { violaPlaces } from './violaPlaces.ts';
import { violinPlaces } from './violinPlaces.ts';

/** The places of a sounding pitch on an instrument; empty where it cannot be played. `step` is the staff step from C0 as it sounds. */
export function placesOf(instrument: Instrument, midi: number, step: number, breadth: Breadth = 'usual'): Place[] {
  switch (instrument.name) {
    case 'violin':
      return violinPlaces(midi, step, breadth);
    case 'viola':
      return violaPlaces(midi, step, breadth);
    case 'cello':
      return celloPlaces(midi);
    case 'double-bass':
      return bassPlaces(instrument, midi);
  }
}
