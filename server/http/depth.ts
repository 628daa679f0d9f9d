/** Nothing that is sent here is nested deeper than a dozen. Chosen, not measured. */
const DEEPEST = 40;

/** Whether a value out of JSON is nested deeper than anything that is sent here; what reads it goes down into it and would not come back. */
export function isTooDeep(value: unknown): boolean {
  let level: unknown[] = [value];
  for (let depth = 0; level.length; depth++) {
    if (depth > DEEPEST) return true;
    level = level.flatMap((one) => (typeof one === 'object' && one !== null ? Object.values(one) : []));
  }
  return false;
}
