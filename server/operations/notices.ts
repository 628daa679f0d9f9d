/** What one face tells the others besides the log: small, in memory, lost on restart. */
export interface Notices {
  /** Content, section or seating of these parts changed. */
  renewed(parts: string[]): void;
  /** A session was ended; its live connections end with it. */
  signedOut(session: string): void;
  listen(listener: Partial<Pick<Notices, 'renewed' | 'signedOut'>>): void;
}

export function createNotices(): Notices {
  const listeners: Partial<Pick<Notices, 'renewed' | 'signedOut'>>[] = [];
  return {
    renewed: (parts) => listeners.forEach((listener) => listener.renewed?.(parts)),
    signedOut: (session) => listeners.forEach((listener) => listener.signedOut?.(session)),
    listen: (listener) => void listeners.push(listener),
  };
}
