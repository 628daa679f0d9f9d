import { useCallback, useEffect, useState } from 'react';

/** Laying the part out for paper, the browser's print, and clearing away when one is back at the page. */
export function usePaper(): { on: boolean; lay(): void; print(): void } {
  const [on, setOn] = useState(false);
  const [printed, setPrinted] = useState(false);
  useEffect(() => {
    if (!printed) return;
    // Some browsers go on drawing the sheets after they have said that printing is over.
    const clear = () => {
      setPrinted(false);
      setOn(false);
    };
    addEventListener('keydown', clear, { once: true });
    addEventListener('pointerdown', clear, { once: true });
    return () => {
      removeEventListener('keydown', clear);
      removeEventListener('pointerdown', clear);
    };
  }, [printed]);
  return {
    on,
    lay: useCallback(() => setOn(true), []),
    print: useCallback(() => {
      window.print();
      setPrinted(true);
    }, []),
  };
}
