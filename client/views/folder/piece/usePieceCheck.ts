import { useCallback, useEffect, useState } from 'react';
import type { PieceCheck } from '../../../../core/agreement/wire/piece.ts';
import { fetchPieceCheck } from '../../../library/pieces.ts';

/** Pauses between two questions to the library. Chosen, not measured: while it reads, and while it is only watched whether something changed since. */
const READING_MS = 400;
const RESTING_MS = 4000;

export interface PieceOnShelf {
  check: PieceCheck | null;
  fault: unknown;
  /** Asks at once. */
  again(): void;
}

/** How a look through the work stands, asked again and again while there is something to hear. */
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
      timer = setTimeout(() => void ask(), isReading ? READING_MS : RESTING_MS);
    };
    void ask();
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [work, round]);
  return { ...state, again };
}
