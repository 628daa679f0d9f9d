type Step = () => unknown;

/** What was started, to be stopped in the opposite order. */
export interface Closing {
  add(step: Step): void;
  /** Ends a start that is under way at its next `check`. */
  ask(): void;
  check(): void;
  close(): Promise<void>;
}

export class StoppedWhileStarting extends Error {}

export function createClosing(): Closing {
  const steps: Step[] = [];
  let asked = false;
  return {
    add: (step) => void steps.push(step),
    ask: () => void (asked = true),
    check() {
      if (asked) throw new StoppedWhileStarting();
    },
    async close() {
      for (let step = steps.pop(); step; step = steps.pop()) await step();
    },
  };
}
