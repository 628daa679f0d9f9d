import { useEffect } from 'react';

/** Runs `act`, and again when it is another one, once what it comes with is painted; at once where the page is left before that. For what nobody waits to see: it must not hold up the frame. */
export function useAfterPaint(act: () => void): void {
  useEffect(() => {
    let done = false;
    const once = () => {
      if (!done) act();
      done = true;
    };
    let timer: ReturnType<typeof setTimeout> | undefined;
    const frame = requestAnimationFrame(() => (timer = setTimeout(once)));
    // A page that is put aside paints no more.
    addEventListener('pagehide', once);
    document.addEventListener('visibilitychange', once);
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(timer);
      removeEventListener('pagehide', once);
      document.removeEventListener('visibilitychange', once);
      once();
    };
  }, [act]);
}
