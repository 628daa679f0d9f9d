import type { Instrument } from '../instruments/instrument.ts';
import type { Finger } from '../music/mark.ts';
import { THUMB, type Place } from './frame.ts';
import { positionNumber } from './positionNumber.ts';

/** What is settled for a note; absent parts are free. */
export interface Pin {
  finger?: Finger;
  /** 1 = highest. */
  string?: number;
  position?: number;
}

/** True when a place keeps to a pin. Half position on violin and viola is first position with a lowered first finger. */
export function keepsTo(instrument: Instrument, place: Place, pin: Pin): boolean {
  if (pin.finger !== undefined && place.finger !== (pin.finger === 'thumb' ? THUMB : pin.finger)) return false;
  if (pin.string !== undefined && place.string !== pin.string) return false;
  if (pin.position === undefined) return true;
  const position = positionNumber(instrument, place);
  if (instrument.name === 'cello' && place.finger === 1 && positionNumber(instrument, place, true) === pin.position) return true;
  return position === pin.position || (pin.position === 0 && position === 1 && instrument.positionsBy === 'letter');
}
