/**
 * JSON text in which equal values are equal texts: keys sorted, absent and undefined alike. A database may hand keys back in another
 * order, and a decision must not depend on that. Example: `canonical({ b: 1, a: [2] })` is `{"a":[2],"b":1}`.
 */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    inner !== null && typeof inner === 'object' && !Array.isArray(inner) ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1))) : inner,
  );
}
