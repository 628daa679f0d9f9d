import Fraction from 'fraction.js';

/**
 * Exact musical time in quarter notes: a whole number, or a reduced fraction as text ("3/2").
 * The same form stands in JSON, so nothing is rounded on the way to a file or a database.
 */
export type ExactTime = number | string;

/** Exact form of a fraction. Invariant: `fraction(exact(f)).equals(f)`. Example: `exact(new Fraction(6, 4))` is `"3/2"`. */
export function exact(value: Fraction): ExactTime {
  return value.d === 1n ? Number(value.s * value.n) : value.toFraction();
}

/** The fraction an exact time stands for. Throws on text that is no fraction. Example: `fraction("3/2").add(1)`. */
export function fraction(time: ExactTime): Fraction {
  return new Fraction(time);
}

/** Quarter notes as a floating-point number, for seconds and drawing, never for comparing times. Example: `quarters("3/2")` is `1.5`. */
export function quarters(time: ExactTime): number {
  if (typeof time === 'number') return time;
  const slash = time.indexOf('/');
  return slash < 0 ? Number(time) : Number(time.slice(0, slash)) / Number(time.slice(slash + 1));
}

/** Sum of two exact times. Example: `plus("1/2", "1/3")` is `"5/6"`. */
export function plus(a: ExactTime, b: ExactTime): ExactTime {
  if (Number.isInteger(a) && Number.isInteger(b)) return (a as number) + (b as number);
  return exact(fraction(a).add(fraction(b)));
}

/** Difference of two exact times. Example: `minus(1, "1/3")` is `"2/3"`. */
export function minus(a: ExactTime, b: ExactTime): ExactTime {
  if (Number.isInteger(a) && Number.isInteger(b)) return (a as number) - (b as number);
  return exact(fraction(a).sub(fraction(b)));
}

/** Order of two exact times: negative, zero or positive. */
export function compareTimes(a: ExactTime, b: ExactTime): number {
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  return fraction(a).compare(fraction(b));
}
