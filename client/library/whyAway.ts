import type { Hindrance } from '../agreement/hindrance.ts';
import { Refused, send } from './http.ts';

/** After this long a library that says nothing is silent. Chosen, not measured. */
const PATIENCE = 4_000;

/** Why there is no live line, by a question on another way: who am I? */
export async function whyAway(): Promise<Hindrance> {
  try {
    await send('/me', { signal: AbortSignal.timeout(PATIENCE) });
    return 'cut';
  } catch (fault) {
    if (!(fault instanceof Refused)) return 'silent';
    if (fault.status === 401) return 'signedOut';
    if (fault.trouble.code === 'SHELVES_AWAY') return 'shelvesAway';
    if (fault.trouble.code === 'SHELVES_FULL') return 'shelvesFull';
    return fault.status === 0 && !navigator.onLine ? 'offline' : 'silent';
  }
}
