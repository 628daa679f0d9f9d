import type { Instrument } from '../instruments/instrument.ts';
import type { LineNote } from './line.ts';
import { notePlaces } from './notePlaces.ts';
import { keepsTo, type Pin } from './pin.ts';

/**
 * True where a note can be stopped, or left open, with the finger and on the string that a pin names; each note by itself, not the hand between them.
 * Example: on the violin a B4 with finger 0 is false, with finger 1 on the second string true.
 */
export function canBePlayedSo(instrument: Instrument, note: LineNote, pin: Pin): boolean {
  return notePlaces(instrument, note, 'all').some((place) => keepsTo(instrument, place, pin));
}
