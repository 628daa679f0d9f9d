import { useSyncExternalStore } from 'react';

let timer: ReturnType<typeof setTimeout> | undefined;
let size = { width: typeof innerWidth === 'number' ? innerWidth : 1440, height: typeof innerHeight === 'number' ? innerHeight : 900 };

function subscribe(changed: () => void): () => void {
  const settle = () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      size = { width: innerWidth, height: innerHeight };
      changed();
    }, 200);
  };
  addEventListener('resize', settle);
  return () => removeEventListener('resize', settle);
}

/** Size of the window once it has come to rest. */
export const useWindowSize = (): { width: number; height: number } => useSyncExternalStore(subscribe, () => size);
