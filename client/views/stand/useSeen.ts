import { useEffect, useState, type RefObject } from 'react';
import type { EngravingSnapshot } from '../../engraving/engraving.ts';

/** First and last measure of the systems on view, as the pages scroll. */
export function useSeen(pages: RefObject<HTMLElement | null>, { systems }: EngravingSnapshot): readonly [number, number] {
  const [seen, setSeen] = useState<readonly [number, number]>([1, 1]);
  useEffect(() => {
    const scroller = pages.current;
    if (!scroller) return;
    let frame = 0;
    const look = () => {
      frame = 0;
      const view = scroller.getBoundingClientRect();
      const shown = [...scroller.querySelectorAll<HTMLElement>('[data-system]')].filter((element) => {
        const { top, bottom } = element.getBoundingClientRect();
        return bottom > view.top + 60 && top < view.bottom - 30;
      });
      const ends = [systems[Number(shown[0]?.dataset.system)]?.first, systems[Number(shown.at(-1)?.dataset.system)]?.last] as const;
      if (ends[0] && ends[1]) setSeen((before) => (before[0] === ends[0] && before[1] === ends[1] ? before : [ends[0]!, ends[1]!]));
    };
    const later = () => {
      frame ||= requestAnimationFrame(look);
    };
    later();
    scroller.addEventListener('scroll', later, { passive: true });
    return () => {
      cancelAnimationFrame(frame);
      scroller.removeEventListener('scroll', later);
    };
  }, [pages, systems]);
  return seen;
}
