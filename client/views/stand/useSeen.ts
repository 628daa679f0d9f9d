import { useEffect, useState, type RefObject } from 'react';
import type { EngravingSnapshot } from '../../engraving/engraving.ts';

/** A line counts as seen when this much of it stands inside the view. */
const INSIDE = '-60px 0px -30px 0px';

/** First and last measure of the systems on view, as the pages scroll. The browser tells which are; to ask every line where it is would lay the page out at every step. */
export function useSeen(pages: RefObject<HTMLElement | null>, { ranges }: EngravingSnapshot): readonly [number, number] {
  const [seen, setSeen] = useState<readonly [number, number]>([1, 1]);
  useEffect(() => {
    const scroller = pages.current;
    if (!scroller) return;
    const shown = new Set<number>();
    const watch = new IntersectionObserver((changes) => {
      for (const { target, isIntersecting } of changes) {
        const system = Number((target as HTMLElement).dataset.system);
        if (isIntersecting) shown.add(system);
        else shown.delete(system);
      }
      const [first, last] = [ranges[Math.min(...shown)]?.first, ranges[Math.max(...shown)]?.last];
      if (first && last) setSeen((before) => (before[0] === first && before[1] === last ? before : [first, last]));
    }, { root: scroller, rootMargin: INSIDE });
    for (const row of scroller.querySelectorAll('[data-system]')) watch.observe(row);
    return () => watch.disconnect();
  }, [pages, ranges]);
  return seen;
}
