import { useSyncExternalStore } from 'react';

let pointed: string | null = null;
const listeners = new Set<() => void>();

/** The note under the pointer, in staff or picture; null when it has left. */
export function point(note: string | null): void {
  if (note === pointed) return;
  pointed = note;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}

/** Outside the desk: a pointer on its way over the page would otherwise draw every system anew. */
export const usePointed = (): string | null => useSyncExternalStore(subscribe, () => pointed);

/** Whether the pointer is on this note; draws anew only when that changes. */
export const useIsPointed = (note: string): boolean => useSyncExternalStore(subscribe, () => pointed === note);

/** What an element that stands for a note takes, so that pointing at it or coming to it by key lights the note everywhere. */
export const pointing = (note: string) => ({ onPointerEnter: () => point(note), onPointerLeave: () => point(null), onFocus: () => point(note), onBlur: () => point(null) });
