import { useEffect } from 'react';
import { commandOf, type Command } from '../../tools/keys.ts';

/** Keys of the stand, wherever the focus lies; a field that is being written in keeps its own, and Enter stays with the button or the folded list it is on. */
export function useKeys(onCommand: (command: Command) => void, writing: boolean): void {
  useEffect(() => {
    if (writing) return;
    const onKey = (event: KeyboardEvent) => {
      const target = event.target as HTMLElement;
      if (target.closest('input, textarea, select')) return;
      if ((event.key === 'Enter' || event.key === ' ') && target.closest('button, a, summary')) return;
      const command = commandOf({ key: event.key, code: event.code, shift: event.shiftKey, control: event.ctrlKey || event.metaKey, alt: event.altKey });
      if (!command) return;
      event.preventDefault();
      onCommand(command);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [onCommand, writing]);
}
