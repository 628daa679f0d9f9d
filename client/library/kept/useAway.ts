import { useSyncExternalStore } from 'react';
import { library } from './library.ts';

/** True while the library cannot be asked, so that what is shown is as it lay here last. */
export const useAway = (): boolean => useSyncExternalStore(library.subscribe, library.away);
