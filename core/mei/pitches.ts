import type { XmlElement } from '../musicxml/element.ts';
import { shown } from './shown.ts';

/** Semitones by MEI's names of accidentals; quarter tones are read as the nearest semitone below them in effect. */
const ALTERS: Record<string, number> = { s: 1, f: -1, n: 0, ss: 2, x: 2, ff: -2, xs: 3, ts: 3, tf: -3, ns: 1, nf: -1, su: 1, sd: 1, fu: -1, fd: -1, nu: 0, nd: 0 };
const SIGNS: Record<string, string> = { s: 'sharp', f: 'flat', n: 'natural', ss: 'sharp-sharp', x: 'double-sharp', ff: 'flat-flat', ts: 'triple-sharp', tf: 'triple-flat', ns: 'natural-sharp', nf: 'natural-flat' };
const SHARPS = 'FCGDAEB';

export interface MeiPitch {
  step: string;
  alter: number;
  octave: number;
  /** MusicXML's name of the sign that is printed; null where none is. */
  sign: string | null;
}

/** Alteration of a letter under a key of so many sharps (flats below zero). Example: F under 2 is 1. */
export function keyAlter(step: string, fifths: number): number {
  const place = SHARPS.indexOf(step);
  if (fifths > place) return Math.floor((fifths - place - 1) / 7) + 1;
  if (-fifths > 6 - place) return -(Math.floor((-fifths - (6 - place) - 1) / 7) + 1);
  return 0;
}

/**
 * How pitches are read in one measure of one staff. A sounding accidental is taken where it is said. A document that never says any is read by its key and by
 * the signs printed before in the measure, octave by octave. Source: MEI Guidelines 5.1, 4.2 (`accid`, `accid.ges`); the second as common practice.
 */
export class Spelling {
  private readonly fifths: number;
  private readonly saysSounding: boolean;
  private readonly before = new Map<string, number>();

  constructor(fifths: number | null, saysSounding: boolean) {
    this.fifths = fifths ?? 0;
    this.saysSounding = saysSounding;
  }

  /** Null for a note without a pitch. */
  read(note: XmlElement): MeiPitch | null {
    const step = (note.attributes.pname ?? '').toUpperCase();
    const octave = Number(note.attributes.oct ?? NaN);
    if (!/^[A-G]$/.test(step) || !Number.isInteger(octave)) return null;
    const inside = shown(note).find(({ name }) => name === 'accid')?.attributes ?? {};
    const written = note.attributes.accid ?? inside.accid;
    const sounding = note.attributes['accid.ges'] ?? inside['accid.ges'];
    const key = `${step}${octave}`;
    const implied = this.saysSounding ? 0 : (this.before.get(key) ?? keyAlter(step, this.fifths));
    const alter = ALTERS[sounding ?? ''] ?? ALTERS[written ?? ''] ?? implied;
    if (written !== undefined) this.before.set(key, alter);
    return { step, alter, octave, sign: written === undefined ? null : (SIGNS[written] ?? null) };
  }
}
