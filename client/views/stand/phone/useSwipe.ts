import { useRef, type PointerEvent } from 'react';

/** How far a finger goes sideways for a swipe, pixels. Chosen, not measured. */
const FAR = 48;

/** Tells of a swipe sideways by finger or stylus: 1 to what comes next, -1 to what came before. */
export function useSwipe(onSwipe: (by: 1 | -1) => void) {
  const start = useRef<{ x: number; y: number } | null>(null);
  return {
    onPointerDown: ({ pointerType, clientX: x, clientY: y }: PointerEvent) => {
      start.current = pointerType === 'mouse' ? null : { x, y };
    },
    onPointerUp: ({ clientX, clientY }: PointerEvent) => {
      const from = start.current;
      start.current = null;
      if (!from) return;
      const along = clientX - from.x;
      if (Math.abs(along) >= FAR && Math.abs(along) > 2 * Math.abs(clientY - from.y)) onSwipe(along < 0 ? 1 : -1);
    },
    onPointerCancel: () => {
      start.current = null;
    },
  };
}
