import { useSyncExternalStore } from 'react';

/** One note that pictures show, outside the desk: a pointer on its way over the page would otherwise draw every system anew. */
function oneNote() {
  let shown: string | null = null;
  const listeners = new Set<() => void>();
  const subscribe = (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => {
      listeners.delete(listener);
    };
  };
  return {
    show(note: string | null): void {
      if (note === shown) return;
      shown = note;
      for (const listener of listeners) listener();
    },
    useNote: (): string | null => useSyncExternalStore(subscribe, () => shown),
    useIs: (note: string): boolean => useSyncExternalStore(subscribe, () => shown === note),
  };
}

/** The note under the pointer, in staff or picture; null when it has left. `useIsPointed` draws anew only when that changes. */
export const { show: point, useNote: usePointed, useIs: useIsPointed } = oneNote();

/** The note that is being heard. */
export const { show: showSounding, useNote: useSounding } = oneNote();

/** What an element that stands for a note takes, so that pointing at it or coming to it by key lights the note everywhere. */
export const pointing = (note: string) => ({ onPointerEnter: () => point(note), onPointerLeave: () => point(null), onFocus: () => point(note), onBlur: () => point(null) });
