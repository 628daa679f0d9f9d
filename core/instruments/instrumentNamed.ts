import type { InstrumentName } from '../music/part.ts';
import { cello } from './cello.ts';
import { doubleBass } from './doubleBass.ts';
import type { Instrument } from './instrument.ts';
import { viola } from './viola.ts';
import { violin } from './violin.ts';

const INSTRUMENTS: Record<InstrumentName, Instrument> = { violin, viola, cello, 'double-bass': doubleBass };

/** The instrument of that name, as it is strung in most orchestras. Example: `instrumentNamed('cello').openStrings[0]` is 57, the A below middle C. */
export function instrumentNamed(name: InstrumentName): Instrument {
  return INSTRUMENTS[name];
}

/**
 * The instrument with another lowest string: a bass with extension or a fifth string, a string tuned down.
 * `lowest` is the sounding MIDI key; it must lie below string 3. Throws where it does not.
 * Example: `withLowestString(doubleBass, 24)` reaches the low C.
 */
export function withLowestString(instrument: Instrument, lowest: number): Instrument {
  const [first, second, third] = instrument.openStrings;
  if (lowest >= third) throw new RangeError(`The lowest string (${lowest}) of ${instrument.name} lies below string 3 (${third}).`);
  return { ...instrument, openStrings: [first, second, third, lowest] };
}
