import { useCallback, useEffect, useRef, useState } from 'react';
import { isUnderWay, type ImportView } from '../../../../core/agreement/wire/imports.ts';
import { fetchImports } from '../../../library/imports.ts';

/** Pauses between two questions to the library: a small score is there at the first, a symphony is not asked about more often than people look. Chosen, not measured. */
const FIRST_MS = 120;
const LATER_MS = 800;
const GROWS = 1.4;

export interface Imports {
  views: readonly ImportView[];
  /** Follows one that has just been begun. */
  follow(view: ImportView): void;
  /** Asks at once. */
  again(): void;
}

/** The imports of the library as long as one is under way and somebody sees the page. `onEnded` hears of each once, when it has ended before our eyes. */
export function useImports(allowed: boolean, onEnded: (view: ImportView) => void): Imports {
  const [views, setViews] = useState<readonly ImportView[]>([]);
  const [round, setRound] = useState(0);
  const followed = useRef(new Set<string>());
  const hear = useRef(onEnded);
  useEffect(() => {
    hear.current = onEnded;
  });
  const again = useCallback(() => setRound((n) => n + 1), []);
  const follow = useCallback((view: ImportView) => {
    followed.current.add(view.id);
    setViews((before) => [...before.filter(({ id }) => id !== view.id), view]);
    setRound((n) => n + 1);
  }, []);
  useEffect(() => {
    if (!allowed) return;
    let current = true;
    let pause = FIRST_MS;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const later = () => {
      if (!document.hidden) timer = setTimeout(() => void ask(), pause);
      pause = Math.min(LATER_MS, pause * GROWS);
    };
    const ask = async (): Promise<void> => {
      const answer = await fetchImports().catch(() => null);
      if (!current) return;
      if (!answer) return followed.current.size ? later() : undefined;
      setViews(answer);
      for (const view of answer) {
        if (isUnderWay(view)) followed.current.add(view.id);
        else if (followed.current.delete(view.id)) hear.current(view);
      }
      if (followed.current.size && answer.some(isUnderWay)) later();
    };
    const back = () => {
      clearTimeout(timer);
      if (!document.hidden) void ask();
    };
    void ask();
    document.addEventListener('visibilitychange', back);
    return () => {
      current = false;
      clearTimeout(timer);
      document.removeEventListener('visibilitychange', back);
    };
  }, [allowed, round]);
  return { views, follow, again };
}
