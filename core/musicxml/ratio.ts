import Fraction from 'fraction.js';
import { type ExactTime, exact } from '../music/time.ts';

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

/**
 * `a / b` as exact time. Whole numbers, all but every case, stay whole-number arithmetic; decimals go through a fraction of their digits.
 * @param b not 0
 * Example: `ratio(6, 4)` is `"3/2"`.
 */
export function ratio(a: number, b: number): ExactTime {
  if (!Number.isSafeInteger(a) || !Number.isSafeInteger(b)) return exact(new Fraction(String(a)).div(new Fraction(String(b))));
  const common = divisor(Math.abs(a), Math.abs(b)) || 1;
  const sign = b < 0 ? -1 : 1;
  const over = (sign * a) / common;
  const under = (sign * b) / common;
  return under === 1 ? over : `${over}/${under}`;
}
