import { useEffect, useMemo, useSyncExternalStore } from 'react';

/** What somebody new is told until they have done it once. */
export type Hint = 'programme' | 'part' | 'note' | 'open' | 'fingerings';

const listeners = new Set<() => void>();
const keyOf = (person: string) => `bowline/done/${person}`;
const kept = (person: string): string => localStorage.getItem(keyOf(person)) ?? '[]';

function read(text: string): readonly string[] {
  try {
    const known: unknown = JSON.parse(text);
    return Array.isArray(known) ? known.filter((one) => typeof one === 'string') : [];
  } catch {
    return [];
  }
}

/** The first hint that is neither done nor was done before. */
export const nextHint = (order: readonly Hint[], known: readonly string[]): Hint | null => order.find((hint) => !known.includes(hint)) ?? null;

/** The one hint to show now, of those that belong here in this order; null when all is known. `done`: what this person does here and now. Kept per person in this browser. */
export function useHint(person: string, order: readonly Hint[], done: readonly Hint[]): Hint | null {
  const text = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => kept(person),
  );
  const known = useMemo(() => read(text), [text]);
  const fresh = done.filter((hint) => !known.includes(hint)).join(' ');
  useEffect(() => {
    if (!fresh) return;
    localStorage.setItem(keyOf(person), JSON.stringify([...new Set([...read(kept(person)), ...fresh.split(' ')])]));
    for (const listener of listeners) listener();
  }, [person, fresh]);
  return nextHint(order, [...known, ...done]);
}
