import type { LogEntry } from '../../core/agreement/event.ts';

/** What one face tells the others besides the log: small, in memory, lost on restart. */
export interface Notices {
  /** New rows of a part's log, in order. */
  logged(part: string, entries: LogEntry[]): void;
  /** Content, section or seating of these parts changed. */
  renewed(parts: string[]): void;
  /** A session was ended; its live connections end with it. */
  signedOut(session: string): void;
  listen(listener: Partial<Omit<Notices, 'listen'>>): void;
}

export function createNotices(): Notices {
  const listeners: Partial<Omit<Notices, 'listen'>>[] = [];
  return {
    logged: (part, entries) => listeners.forEach((listener) => listener.logged?.(part, entries)),
    renewed: (parts) => listeners.forEach((listener) => listener.renewed?.(parts)),
    signedOut: (session) => listeners.forEach((listener) => listener.signedOut?.(session)),
    listen: (listener) => void listeners.push(listener),
  };
}
