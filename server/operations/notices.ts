import type { LogEntry } from '../../core/agreement/event.ts';

/** What one face tells the others besides the log: small, in memory, lost on restart. */
export interface Notices {
  /** New rows of a part's log, in order. `ours`: written by this server; otherwise found in the store, written by another. */
  logged(part: string, entries: LogEntry[], ours: boolean): void;
  /** Content, section or seating of these parts changed. `everywhere`: every server hears of it by itself and tells its own followers. */
  renewed(parts: string[], everywhere?: boolean): void;
  /** A session was ended; its live connections end with it. */
  signedOut(session: string): void;
  /** Somebody has left an ensemble, or stands there otherwise: what their live connections follow is looked at again. */
  left(person: string, elsewhere?: boolean): void;
  listen(listener: Partial<Omit<Notices, 'listen'>>): void;
}

export function createNotices(): Notices {
  const listeners: Partial<Omit<Notices, 'listen'>>[] = [];
  return {
    logged: (part, entries, ours) => listeners.forEach((listener) => listener.logged?.(part, entries, ours)),
    renewed: (parts, everywhere = false) => listeners.forEach((listener) => listener.renewed?.(parts, everywhere)),
    signedOut: (session) => listeners.forEach((listener) => listener.signedOut?.(session)),
    left: (person, elsewhere = false) => listeners.forEach((listener) => listener.left?.(person, elsewhere)),
    listen: (listener) => void listeners.push(listener),
  };
}
