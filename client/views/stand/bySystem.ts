/** What stands in each of `ranges` of measures, in the order given; `measuresOf` gives the measure a thing is in, or the first and the last. */
export function bySystem<T>(ranges: readonly { first: number; last: number }[], things: readonly T[], measuresOf: (thing: T) => number | readonly [from: number, to: number]): readonly (readonly T[])[] {
  const systemAt: number[] = [];
  for (const [i, { first, last }] of ranges.entries()) for (let ordinal = first; ordinal <= last; ordinal += 1) systemAt[ordinal] = i;
  const found: T[][] = ranges.map(() => []);
  for (const thing of things) {
    const measures = measuresOf(thing);
    const [from, to] = typeof measures === 'number' ? [measures, measures] : measures;
    const begins = systemAt[from];
    if (begins === undefined) continue;
    for (let i = begins; i <= (systemAt[to] ?? begins); i += 1) found[i]!.push(thing);
  }
  return found;
}
