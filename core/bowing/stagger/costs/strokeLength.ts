/** Points for a bow twice as long as is comfortable; chosen, not measured. */
const DOUBLE = 20;

/**
 * What a stroke costs for lying away from the comfortable length: the square of the relative distance, so that two bows a little
 * off are better than one far off.
 * @param seconds length of the stroke, 0 or more
 * @param comfortable seconds, more than 0
 * @returns whole points, 0 or more. Example: `strokeLengthCost(6, 4)` is 5.
 */
export function strokeLengthCost(seconds: number, comfortable: number): number {
  return Math.round(DOUBLE * ((seconds - comfortable) / comfortable) ** 2);
}
