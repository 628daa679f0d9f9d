import { useEffect } from 'react';
import { keepsKeys } from '../../ui/keepsKeys.ts';

/** Keys of this place by their name; Enter on a button or a link is the button's own. */
export function useCarryKeys(keys: Readonly<Record<string, () => void>>): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey || keepsKeys(event)) return;
      const act = keys[event.key];
      if (!act || (event.key === 'Enter' && (event.target as HTMLElement).closest('a, button:not(.what)'))) return;
      event.preventDefault();
      act();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [keys]);
}
