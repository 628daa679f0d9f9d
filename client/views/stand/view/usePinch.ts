import { useEffect, type RefObject } from 'react';

/** Two fingers on the pages: what lies under them grows as they part; `onPinch` hears by how much when they leave. */
export function usePinch(pages: RefObject<HTMLElement | null>, onPinch: (by: number) => void): void {
  useEffect(() => {
    const element = pages.current;
    if (!element) return;
    let start = 0;
    let by = 1;
    const apart = ({ touches }: TouchEvent) => Math.hypot(touches[0]!.clientX - touches[1]!.clientX, touches[0]!.clientY - touches[1]!.clientY);
    const grown = () => element.querySelector<HTMLElement>('.systems');
    const begin = (event: TouchEvent) => {
      if (event.touches.length !== 2) return;
      start = apart(event);
      by = 1;
    };
    const move = (event: TouchEvent) => {
      if (!start || event.touches.length !== 2) return;
      event.preventDefault();
      by = apart(event) / start;
      grown()?.style.setProperty('transform', `scale(${by})`);
    };
    const end = (event: TouchEvent) => {
      if (!start || event.touches.length >= 2) return;
      start = 0;
      grown()?.style.removeProperty('transform');
      if (Math.abs(by - 1) > 0.08) onPinch(by);
    };
    element.addEventListener('touchstart', begin, { passive: true });
    element.addEventListener('touchmove', move, { passive: false });
    element.addEventListener('touchend', end);
    element.addEventListener('touchcancel', end);
    return () => {
      element.removeEventListener('touchstart', begin);
      element.removeEventListener('touchmove', move);
      element.removeEventListener('touchend', end);
      element.removeEventListener('touchcancel', end);
    };
  }, [pages, onPinch]);
}
