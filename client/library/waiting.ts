import type { WaitingView } from '../../core/agreement/wire/http.ts';
import { keptJson } from './kept/library.ts';

export const fetchWaiting = () => keptJson<WaitingView>('/me/waiting');

/** Tells the library how far the log was read here. It is told on leaving too, so the page does not wait for the answer; unheard, the same is told again later. */
export function tellSeen(part: string, seq: number): void {
  void fetch(`/api/parts/${part}/seen`, { method: 'PUT', credentials: 'same-origin', keepalive: true, headers: { 'content-type': 'application/json' }, body: JSON.stringify({ seq }) }).catch(() => undefined);
}
