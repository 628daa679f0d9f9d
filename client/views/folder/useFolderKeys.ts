import { useEffect } from 'react';
import { go } from '../../router.ts';
import { keepsKeys } from '../../ui/keepsKeys.ts';
import { neighbour, type Cells } from './cells.ts';

const ARROWS: Record<string, readonly [number, number]> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/** Arrows walk the parts, Enter lays the one in hand on the stand, Esc goes back to the shelf. */
export function useFolderKeys(cells: Cells, chosen: string | null, onChoose: (part: string) => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const target = event.target as HTMLElement;
      if (event.altKey || event.ctrlKey || event.metaKey || keepsKeys(event)) return;
      // In a list that is open the arrows scroll.
      const arrow = target.closest('.fold') ? undefined : ARROWS[event.key];
      if (arrow) {
        const next = neighbour(cells, chosen, ...arrow);
        if (next) onChoose(next);
        event.preventDefault();
      } else if (event.key === 'Enter' && chosen && !target.closest('a, button')) go({ at: 'stand', part: chosen, measure: null });
      else if (event.key === 'Escape') go({ at: 'shelf' });
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [cells, chosen, onChoose]);
}
