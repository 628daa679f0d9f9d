import type { Clock } from './clock.ts';

/** Says for a moment that what waited has arrived, when something had kept it. */
export interface Arrival {
  /** What is so now: whether anything keeps lines, and how many wait. */
  see(kept: boolean, waiting: number): void;
  /** One of them came back refused: not all has arrived. */
  refused(): void;
  said(): boolean;
  close(): void;
}

export function arrival(clock: Clock, ms: number, changed: () => void): Arrival {
  let owed = false;
  let said = false;
  let cancel = () => {};
  return {
    see(kept, waiting) {
      if (kept && waiting > 0) {
        owed = true;
        said = false;
        cancel();
      } else if (owed && !kept && waiting === 0) {
        owed = false;
        said = true;
        cancel = clock.after(ms, () => {
          said = false;
          changed();
        });
      }
    },
    refused: () => void (owed = false),
    said: () => said,
    close: () => cancel(),
  };
}
