import { useEffect } from 'react';
import { go } from '../../router.ts';
import { keepsKeys } from '../../ui/keepsKeys.ts';

/** Arrows move what is compared, with Shift the earlier of the two; Ctrl+P is the browser's own; Esc goes back to the stand. */
export function useStateKeys(part: string, step: (which: 'from' | 'to', by: 1 | -1) => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey || keepsKeys(event)) return;
      const by = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : null;
      if (by !== null) {
        step(event.shiftKey ? 'from' : 'to', by);
        event.preventDefault();
      } else if (event.key === 'Escape') go({ at: 'stand', part, measure: null });
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [part, step]);
}
