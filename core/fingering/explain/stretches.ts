import { placeOnString, semitonesAbove } from '../../hand/place.ts';
import { reachOf, USUAL_HAND, zoneOf, type Zone } from '../../hand/reach.ts';
import type { Millimetres, StringNumber } from '../../instruments/instrument.ts';
import type { LineNote } from '../line.ts';
import type { PlainFingering } from '../output.ts';
import type { PlayedLine } from './playedLine.ts';

export type PlainNote = PlainFingering['notes'][number];

/** Two fingers held to one hand, as far apart as their notes ask. */
export interface Stretch {
  /** Lower finger first. */
  fingers: [number, number];
  /** The notes they stop, in the order played. */
  notes: [string, string];
  mm: Millimetres;
  /** For the player's own hand. */
  zone: Zone;
  /** Past what a usual hand, or this one, is known to stretch: the caution belongs beside it. */
  beyond: boolean;
}

/** Kinds of step in which both fingers belong to one place of the hand; in the others the hand lets go of the note before. */
const HELD: ReadonlySet<string> = new Set(['stays', 'crosses', 'extension', 'contraction', 'delayed-shift', 'together']);

/**
 * The stretch between two notes that one hand holds to, or null where there is none: an open string, the thumb, one finger, or a hand that moves.
 * Distance along the string in mm, equal temperament. Example: violin, B4 with 1 to F sharp 5 with 4 on the A string is 97 mm and stretched.
 */
export function stretchBetween({ instrument, hand = USUAL_HAND }: PlayedLine, a: PlainNote, b: PlainNote, pitchOf: (id: string) => LineNote): Stretch | null {
  if (!HELD.has(b.step.kind) || typeof a.finger !== 'number' || typeof b.finger !== 'number' || a.finger === 0 || b.finger === 0 || a.finger === b.finger) return null;
  const at = (note: PlainNote): Millimetres => placeOnString(semitonesAbove(instrument, note.string as StringNumber, pitchOf(note.id).midi), instrument.stringLength);
  const mm = Math.abs(at(b) - at(a));
  const zone = zoneOf(reachOf(instrument.name, a.finger, b.finger, hand), mm);
  const usual = zoneOf(reachOf(instrument.name, a.finger, b.finger), mm);
  return { fingers: [Math.min(a.finger, b.finger), Math.max(a.finger, b.finger)], notes: [a.id, b.id], mm, zone, beyond: zone === 'exceptional' || usual === 'exceptional' };
}

const ORDER: Record<Zone, number> = { comfortable: 0, stretched: 1, exceptional: 2 };

/** The one that asks most of the hand: the worst zone, then the most mm; null of none. */
export function widestOf(stretches: readonly (Stretch | null)[]): Stretch | null {
  return stretches.reduce((widest, stretch) => (stretch !== null && (widest === null || ORDER[stretch.zone] > ORDER[widest.zone] || (stretch.zone === widest.zone && stretch.mm > widest.mm)) ? stretch : widest), null);
}
