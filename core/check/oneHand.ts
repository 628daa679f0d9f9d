import { placeOnString, stringsFor } from '../hand/place.ts';
import { chordReach } from '../hand/reach.ts';
import type { Instrument, Millimetres, StringNumber } from '../instruments/instrument.ts';
import type { Finger } from '../music/mark.ts';

/** One note of a double stop as far as its marks say. */
export interface Held {
  midi: number;
  finger?: Finger;
  string?: StringNumber;
}

export type Hindrance = { kind: 'oneString' | 'apart' | 'oneFinger' | 'crossed' } | { kind: 'wide'; mm: Millimetres; limit: Millimetres };

/** One finger lies across two strings straight, or leaning this far; higher fingers may stand this far behind lower ones. Semitones; chosen, not measured. */
const LEAN = 1;

function onStrings(instrument: Instrument, a: Held, b: Held, [sa, sb]: [StringNumber, StringNumber]): Hindrance | null | 'impossible' {
  const [one, other] = [a.midi - instrument.openStrings[sa - 1]!, b.midi - instrument.openStrings[sb - 1]!];
  if ((a.finger === 0) !== (one === 0) && a.finger !== undefined) return 'impossible';
  if ((b.finger === 0) !== (other === 0) && b.finger !== undefined) return 'impossible';
  if (typeof a.finger !== 'number' || typeof b.finger !== 'number' || a.finger === 0 || b.finger === 0) return null;
  if (a.finger === b.finger) return Math.abs(one - other) <= LEAN ? null : { kind: 'oneFinger' };
  const [low, high] = a.finger < b.finger ? [one, other] : [other, one];
  if (high < low - LEAN) return { kind: 'crossed' };
  const mm = Math.abs(placeOnString(high, instrument.stringLength) - placeOnString(low, instrument.stringLength));
  const limit = chordReach(instrument.name, a.finger, b.finger);
  return mm > limit ? { kind: 'wide', mm, limit } : null;
}

/**
 * What keeps one hand from holding two notes at once as marked, or null where some choice of strings and free fingers holds them. Says nothing where a
 * mark contradicts its own pitch. Model: neighbouring strings, fingers in order up to a semitone, the reach tables with a margin; the thumb always holds.
 * Example: violin D4 and E4, both on the G string, hinder each other by "oneString".
 */
export function hindrance(instrument: Instrument, a: Held, b: Held): Hindrance | null {
  const strings = ({ midi, string }: Held): StringNumber[] => (string === undefined ? stringsFor(instrument, midi) : [string]);
  const pairs = strings(a).flatMap((sa) => strings(b).map((sb): [StringNumber, StringNumber] => [sa, sb]));
  if (pairs.length === 0) return null;
  const apart = pairs.filter(([sa, sb]) => sa !== sb);
  if (apart.length === 0) return { kind: 'oneString' };
  const neighbours = apart.filter(([sa, sb]) => Math.abs(sa - sb) === 1);
  if (neighbours.length === 0) return { kind: 'apart' };
  const found = neighbours.map((pair) => onStrings(instrument, a, b, pair)).filter((result) => result !== 'impossible');
  if (found.length === 0 || found.includes(null)) return null;
  const wide = found.filter((result) => result?.kind === 'wide').sort((x, y) => x.mm - y.mm);
  return wide[0] ?? found[0]!;
}
