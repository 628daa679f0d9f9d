import { useCallback, useState } from 'react';
import { troubleText } from '../library/http.ts';

/** A sentence for the ledge after something was done, or could not be. */
export function useSay(): { said: string | null; say(sentence: string | null): void; attempt(act: () => Promise<string | null | void>): Promise<void> } {
  const [said, say] = useState<string | null>(null);
  const attempt = useCallback(async (act: () => Promise<string | null | void>) => {
    try {
      say((await act()) ?? null);
    } catch (fault) {
      say(troubleText(fault));
    }
  }, []);
  return { said, say, attempt };
}
