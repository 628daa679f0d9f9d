import Fraction from 'fraction.js';

const NAMED: Record<string, [quarters: number, type: string]> = { maxima: [32, 'maxima'], long: [16, 'long'], breve: [8, 'breve'] };
const TYPES: Record<number, string> = { 1: 'whole', 2: 'half', 4: 'quarter', 8: 'eighth', 16: '16th', 32: '32nd', 64: '64th', 128: '128th', 256: '256th' };

export interface Value {
  /** Quarters, dots counted in. */
  quarters: Fraction;
  /** MusicXML's name. */
  type: string;
}

/** A note value of MEI; null for one this reader does not know. Example: `valueOf('8', 1)` lasts 3/4 and is an "eighth". */
export function valueOf(dur: string, dots: number): Value | null {
  const number = Number(dur);
  const [quarters, type] = NAMED[dur] ?? (TYPES[number] ? [new Fraction(4, number), TYPES[number]] : [null, '']);
  if (quarters === null) return null;
  let sum = new Fraction(quarters);
  let part = sum;
  for (let i = 0; i < dots; i += 1) {
    part = part.div(2);
    sum = sum.add(part);
  }
  return { quarters: sum, type };
}
