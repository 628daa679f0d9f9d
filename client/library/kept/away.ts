/** Whether the library can be asked. */
export interface Reach {
  away(): boolean;
  /** How often it came back: what was shown from what was kept is asked for anew then. */
  returns(): number;
  subscribe(changed: () => void): () => void;
  /** A question found no line: knocks until the library answers. */
  lost(): void;
}

/** Pause between two knocks, in milliseconds. Chosen, not measured. */
const KNOCK = 3_000;

/** `knock` resolves where the library answers and rejects where it does not. `after` runs something once, later. */
export function reach(knock: () => Promise<unknown>, after: (ms: number, run: () => void) => void): Reach {
  const listeners = new Set<() => void>();
  let away = false;
  let returns = 0;
  const changed = () => listeners.forEach((listener) => listener());
  const knockAgain = () =>
    after(KNOCK, () => {
      knock().then(() => {
        away = false;
        returns += 1;
        changed();
      }, knockAgain);
    });
  return {
    away: () => away,
    returns: () => returns,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    lost() {
      if (away) return;
      away = true;
      changed();
      knockAgain();
    },
  };
}
