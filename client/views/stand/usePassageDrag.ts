import { useRef, type MouseEvent, type PointerEvent } from 'react';
import { dragged, type Drag } from '../../tools/caret/passageDrag.ts';

const noteAt = (x: number, y: number): string | null => document.elementFromPoint(x, y)?.closest('[data-note]')?.getAttribute('data-note') ?? null;

/** A passage taken in hand by going along the staff with finger, stylus or mouse. Up and down stays the page's own scrolling. */
export function usePassageDrag(onNote: (note: string, extend: boolean) => void) {
  const drag = useRef<Drag | null>(null);
  const last = useRef<string | null>(null);
  return {
    onPointerDown: ({ target, clientX: x, clientY: y, button }: PointerEvent) => {
      const from = (target as Element).getAttribute('data-note');
      drag.current = from && button === 0 ? { from, x, y, begun: false } : null;
      last.current = null;
    },
    onPointerMove: (event: PointerEvent) => {
      const before = drag.current;
      if (!before) return;
      const now = dragged(before, event.clientX, event.clientY);
      if (!now.begun) return;
      if (!before.begun) {
        (event.target as Element).setPointerCapture(event.pointerId);
        onNote(now.from, false);
      }
      drag.current = now;
      const note = noteAt(event.clientX, event.clientY);
      if (note === null || note === last.current) return;
      last.current = note;
      onNote(note, true);
    },
    onPointerUp: () => {
      if (!drag.current?.begun) drag.current = null;
    },
    onPointerCancel: () => {
      drag.current = null;
    },
    // Where a mouse lets go after a drag is no press of a note.
    onClickCapture: (event: MouseEvent) => {
      if (drag.current?.begun) event.stopPropagation();
      drag.current = null;
    },
  };
}
