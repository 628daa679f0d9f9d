import { useEffect } from 'react';
import { commandOf, type Command } from '../../tools/keys.ts';
import { keepsKeys } from '../../ui/keepsKeys.ts';
import { point } from './pointed.ts';

/** Keys of the stand, wherever the focus lies; a field that is being written in and an unfolded list keep their own, and Enter stays with the button it is on. */
export function useKeys(onCommand: (command: Command) => void, writing: boolean): void {
  useEffect(() => {
    if (writing) return;
    const onKey = (event: KeyboardEvent) => {
      const target = event.target as HTMLElement;
      if (keepsKeys(event)) return;
      if ((event.key === 'Enter' || event.key === ' ') && target.closest('button, a')) return;
      const command = commandOf({ key: event.key, code: event.code, shift: event.shiftKey, control: event.ctrlKey || event.metaKey, alt: event.altKey });
      if (!command) return;
      event.preventDefault();
      // Two places would be shown: the pointer lies where it was left.
      point(null);
      onCommand(command);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [onCommand, writing]);
}
