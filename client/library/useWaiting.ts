import { useEffect } from 'react';
import type { WaitingView } from '../../core/agreement/wire/http.ts';
import { useLoaded } from './useLoaded.ts';
import { fetchWaiting } from './waiting.ts';

/** Pause between two questions, where no part is open that would tell of itself. Chosen, not measured. */
const AGAIN_MS = 15_000;

/** What waits for me over all parts: asked again as long as somebody sees the page, and at once whenever one comes back to it. */
export function useWaiting(): WaitingView | null {
  const { value, again } = useLoaded('waiting', fetchWaiting);
  useEffect(() => {
    const look = () => {
      if (!document.hidden) again();
    };
    const timer = setInterval(look, AGAIN_MS);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [again]);
  return value;
}
