import type Fraction from 'fraction.js';

/** Divisions of a quarter in what is written: holds 256ths, and threes, fives, sevens and nines of shorter values. */
export const DIVISIONS = 20_160;

/** A time in divisions, rounded where a tuplet is finer. Example: `divisionsOf(new Fraction(1, 3))` is 6720. */
export const divisionsOf = (quarters: Fraction): number => Math.round(quarters.mul(DIVISIONS).valueOf());
