import { useCallback, useEffect, useState, useSyncExternalStore } from 'react';
import { library } from './kept/library.ts';

export interface Loaded<T> {
  value: T | null;
  fault: unknown;
  again(): void;
}

/** Fetches when `key` changes, whenever asked again, and when the library can be asked after it could not; the last value stays while the next is on its way. */
export function useLoaded<T>(key: string, fetchIt: () => Promise<T>): Loaded<T> {
  const [state, setState] = useState<{ key: string; value: T | null; fault: unknown }>({ key, value: null, fault: null });
  const [round, setRound] = useState(0);
  const returns = useSyncExternalStore(library.subscribe, library.returns);
  const again = useCallback(() => setRound((n) => n + 1), []);
  useEffect(() => {
    let current = true;
    fetchIt().then(
      (value) => current && setState({ key, value, fault: null }),
      (fault: unknown) => current && setState((before) => ({ ...before, key, fault })),
    );
    return () => {
      current = false;
    };
    // `key` names what `fetchIt` fetches.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [key, round, returns]);
  return { value: state.key === key ? state.value : null, fault: state.key === key ? state.fault : null, again };
}
