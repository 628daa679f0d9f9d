const sameFields = (a: object, b: object): boolean => {
  const names = Object.keys(a) as (keyof typeof a)[];
  return names.length === Object.keys(b).length && names.every((name) => Object.is(a[name], b[name]));
};

const same = (a: unknown, b: unknown): boolean => Object.is(a, b) || (typeof a === 'object' && typeof b === 'object' && a !== null && b !== null && !Array.isArray(a) && sameFields(a, b));

/** True where a view would draw the same: lists are the same where what they hold is, whoever made them anew. */
export function sameProps<Props extends object>(before: Props, after: Props): boolean {
  return (Object.keys(after) as (keyof Props)[]).every((name) => {
    const [a, b] = [before[name], after[name]];
    if (!Array.isArray(a) || !Array.isArray(b)) return Object.is(a, b);
    return a.length === b.length && a.every((one, i) => same(one, b[i]));
  });
}

/** What stands in each of `ranges` of measures, in the order given; `measureOf` gives the first and the last measure a thing is in. */
export function bySystem<T>(ranges: readonly { first: number; last: number }[], things: readonly T[], measuresOf: (thing: T) => readonly [from: number, to: number]): readonly (readonly T[])[] {
  const systemAt: number[] = [];
  for (const [i, { first, last }] of ranges.entries()) for (let ordinal = first; ordinal <= last; ordinal += 1) systemAt[ordinal] = i;
  const found: T[][] = ranges.map(() => []);
  for (const thing of things) {
    const [from, to] = measuresOf(thing);
    const begins = systemAt[from];
    if (begins === undefined) continue;
    for (let i = begins; i <= (systemAt[to] ?? begins); i += 1) found[i]!.push(thing);
  }
  return found;
}
