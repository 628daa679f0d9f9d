import type { Measure } from './part.ts';

/** Number of a measure as printed, or its ordinal where nothing is printed. Example: a pickup without a number is "1". */
export const numberOf = (measure: Measure): string => measure.number || String(measure.ordinal);

/** `numberOf` the measure with an ordinal (from 1) of a part; the ordinal itself where the part has none such. Example: `numberAt(part, 12)` is "11" after a pickup numbered 0. */
export function numberAt({ measures }: { measures: readonly Measure[] }, ordinal: number): string {
  const measure = measures[ordinal - 1];
  return measure ? numberOf(measure) : String(ordinal);
}
