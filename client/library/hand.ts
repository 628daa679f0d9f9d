import { useEffect, useState } from 'react';
import type { HandProfile } from '../../core/hand/reach.ts';
import { remove, sendJson } from './http.ts';
import { keptJson } from './kept/library.ts';

export const fetchHand = async (): Promise<HandProfile | null> => (await keptJson<{ hand: HandProfile | null }>('/me/hand')).hand;
export const keepHand = (hand: HandProfile) => sendJson('PUT', '/me/hand', hand);
export const forgetHand = () => remove('/me/hand');

/** My own hand, as I told the library; null where I told nothing, or it cannot be asked now. */
export function useHand(): HandProfile | null {
  const [hand, setHand] = useState<HandProfile | null>(null);
  useEffect(() => {
    let current = true;
    fetchHand().then(
      (found) => current && setHand(found),
      // Without a line the usual hand serves.
      () => undefined,
    );
    return () => {
      current = false;
    };
  }, []);
  return hand;
}
