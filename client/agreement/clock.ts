/** Time as the agreement needs it; tests turn a clock of their own. */
export interface Clock {
  /** Milliseconds since 1970. */
  now(): number;
  /** Runs once after `ms`, unless the returned function is called before. */
  after(ms: number, run: () => void): () => void;
}

export const systemClock: Clock = {
  now: () => Date.now(),
  after(ms, run) {
    const timer = setTimeout(run, ms);
    return () => clearTimeout(timer);
  },
};

/** Milliseconds; chosen, not measured. */
export interface Timing {
  /** How long to wait for an answer before asking again. */
  answer: number;
  /** First pause before asking again; doubles up to `longest`. */
  pause: number;
  longest: number;
  /** After this long without an answer people are told that it is not yet written. */
  patience: number;
  /** How long they are told that what waited is written. */
  written: number;
}

export const TIMING: Timing = { answer: 10_000, pause: 300, longest: 5_000, patience: 3_000, written: 6_000 };

/** Pause before the nth attempt to ask again, from 0. */
export function pauseBefore(attempt: number, { pause, longest }: Timing): number {
  return Math.min(longest, pause * 2 ** Math.min(attempt, 20));
}
