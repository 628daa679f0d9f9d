import { useEffect } from 'react';
import { keepsKeys } from './keepsKeys.ts';

/** Keys of a place by their names, with `Shift+` before those that are held with it. Enter stays with the button or link it is on, but not with a button that is pressed already. */
export function usePlaceKeys(keys: Readonly<Record<string, () => void>>): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey || keepsKeys(event)) return;
      const act = keys[event.shiftKey ? `Shift+${event.key}` : event.key];
      if (!act || (event.key === 'Enter' && (event.target as HTMLElement).closest('a, button:not([aria-pressed=true])'))) return;
      event.preventDefault();
      act();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [keys]);
}
