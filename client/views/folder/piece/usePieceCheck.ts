import { useCallback, useEffect, useState } from 'react';
import type { PieceCheck } from '../../../../core/agreement/wire/piece.ts';
import { fetchPieceCheck } from '../../../library/pieces.ts';

/** Pause between two questions to the library while it reads. Chosen, not measured. */
const READING_MS = 400;

export interface PieceOnShelf {
  check: PieceCheck | null;
  fault: unknown;
  /** Asks at once. */
  again(): void;
}

/** How a look through the work stands: asked again and again while one is running and somebody sees the page, and once whenever one comes back to it. */
export function usePieceCheck(work: string): PieceOnShelf {
  const [state, setState] = useState<{ check: PieceCheck | null; fault: unknown }>({ check: null, fault: null });
  const [round, setRound] = useState(0);
  const again = useCallback(() => setRound((n) => n + 1), []);
  useEffect(() => {
    let current = true;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const ask = async (): Promise<void> => {
      const answer = await fetchPieceCheck(work).then((check) => ({ check, fault: null }), (fault: unknown) => ({ fault }));
      if (!current) return;
      setState((before) => ({ ...before, ...answer }));
      const isReading = 'check' in answer && answer.check.running !== null;
      if (isReading && !document.hidden) timer = setTimeout(() => void ask(), READING_MS);
    };
    const back = () => {
      clearTimeout(timer);
      if (!document.hidden) void ask();
    };
    void ask();
    addEventListener('focus', back);
    document.addEventListener('visibilitychange', back);
    return () => {
      current = false;
      clearTimeout(timer);
      removeEventListener('focus', back);
      document.removeEventListener('visibilitychange', back);
    };
  }, [work, round]);
  return { ...state, again };
}
