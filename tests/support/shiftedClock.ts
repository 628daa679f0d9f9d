import { readFileSync } from 'node:fs';

/**
 * Preloaded into a process (`node --import`): its wall clock is off by the milliseconds that the file BOWLINE_CLOCK_FILE holds, read twice a second, as when
 * somebody sets a machine's clock. Timers and the steady clock go on as they were.
 */
const file = process.env.BOWLINE_CLOCK_FILE;
const Real = Date;
let shift = 0;

function read(): void {
  try {
    shift = Number(readFileSync(file!, 'utf8')) || 0;
  } catch {
    shift = 0;
  }
}

class Shifted extends Real {
  constructor(...given: unknown[]) {
    if (given.length === 0) super(Real.now() + shift);
    else super(...(given as [number]));
  }
  static override now(): number {
    return Real.now() + shift;
  }
}

if (file) {
  read();
  setInterval(read, 500).unref();
  globalThis.Date = Shifted as DateConstructor;
}
