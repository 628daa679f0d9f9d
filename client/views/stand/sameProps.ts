const sameFields = (a: object, b: object): boolean => {
  const names = Object.keys(a) as (keyof typeof a)[];
  return names.length === Object.keys(b).length && names.every((name) => Object.is(a[name], b[name]));
};

const same = (a: unknown, b: unknown): boolean => Object.is(a, b) || (typeof a === 'object' && typeof b === 'object' && a !== null && b !== null && !Array.isArray(a) && sameFields(a, b));

/** True where a view would draw the same: lists are the same where what they hold is, whoever made them anew. */
export function sameProps<Props extends object>(before: Props, after: Props): boolean {
  return (Object.keys(after) as (keyof Props)[]).every((name) => {
    const [a, b] = [before[name], after[name]];
    if (Object.is(a, b)) return true;
    if (!Array.isArray(a) || !Array.isArray(b)) return false;
    return a.length === b.length && a.every((one, i) => same(one, b[i]));
  });
}
