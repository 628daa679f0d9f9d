import Fraction from 'fraction.js';
import { childrenNamed, type XmlElement } from '../musicxml/element.ts';

/** What holds on a staff until it is said otherwise. */
export interface Standing {
  meter: { count: string; unit: string } | null;
  fifths: number | null;
  clef: { shape: string; line: string; octaves: number } | null;
  /** Semitones from written to sounding. */
  semitones: number;
  diatonic: number;
}

export const nothingStands = (): Standing => ({ meter: null, fifths: null, clef: null, semitones: 0, diatonic: 0 });

/** Sharps above zero, flats below; null where a key is mixed or none is said. Example: `fifthsOf('3f')` is -3. */
export function fifthsOf(signature: string | undefined): number | null {
  const read = /^(\d+)(s|f)?$/.exec(signature ?? '');
  if (!read) return null;
  return read[2] === 'f' ? -Number(read[1]) : Number(read[1]);
}

/** Reads a clef from its own element or from attributes of a staff definition. */
export function clefOf(attributes: Readonly<Record<string, string>>, prefix: '' | 'clef.'): Standing['clef'] {
  const shape = attributes[`${prefix}shape`];
  if (!shape) return null;
  const [distance, place] = [Number(attributes[`${prefix}dis`] ?? 1), attributes[`${prefix}dis.place`]];
  const octaves = distance >= 8 ? ((distance - 1) / 7) * (place === 'below' ? -1 : 1) : 0;
  return { shape: shape === 'GG' ? 'G' : shape, line: attributes[`${prefix}line`] ?? { G: '2', F: '4', C: '3' }[shape] ?? '2', octaves: shape === 'GG' ? -1 : octaves };
}

/**
 * Takes over what a score or staff definition says, in attributes or in children. Source: MEI Guidelines 5.1, chapters 2 and 4.
 * A definition of the score speaks of all its staves but for clef and transposition.
 */
export function define(standing: Standing, definition: XmlElement): void {
  const { attributes } = definition;
  const [meter] = childrenNamed(definition, 'meterSig').concat(childrenNamed(definition, 'meterSigGrp').flatMap((group) => childrenNamed(group, 'meterSig')));
  const [key] = childrenNamed(definition, 'keySig');
  const [clef] = childrenNamed(definition, 'clef');
  const said = { count: attributes['meter.count'] ?? meter?.attributes.count, unit: attributes['meter.unit'] ?? meter?.attributes.unit, sym: attributes['meter.sym'] ?? meter?.attributes.sym };
  if (said.count && said.unit) standing.meter = { count: said.count, unit: said.unit };
  else if (said.sym) standing.meter = said.sym === 'cut' ? { count: '2', unit: '2' } : { count: '4', unit: '4' };
  const fifths = fifthsOf(attributes.keysig ?? attributes['key.sig'] ?? key?.attributes.sig);
  if (fifths !== null) standing.fifths = fifths;
  standing.clef = (clef ? clefOf(clef.attributes, '') : clefOf(attributes, 'clef.')) ?? standing.clef;
  if (attributes['trans.semi'] !== undefined) standing.semitones = Number(attributes['trans.semi']) || 0;
  if (attributes['trans.diat'] !== undefined) standing.diatonic = Number(attributes['trans.diat']) || 0;
}

/** Quarters a whole measure lasts by its meter; four where none is said. Example: 6/8 is 3. */
export function measureLength({ meter }: Standing): Fraction {
  const beats = (meter?.count ?? '4').split('+').reduce((sum, part) => sum + (Number(part) || 0), 0);
  return new Fraction(4 * (beats || 4), Number(meter?.unit) || 4);
}

/** Quarters from the beginning of the measure to a time stamp, which counts in beats of the meter from 1. Not before the measure. */
export function stampTime({ meter }: Standing, stamp: number): Fraction {
  const unit = Number(meter?.unit) || 4;
  const time = new Fraction(Math.round((stamp - 1) * 10_000), 10_000).mul(4).div(unit);
  return time.compare(0) < 0 ? new Fraction(0) : time;
}
