import type { PieceAnswer } from './checkPiece.ts';
import { runInWorker, type RunOptions } from './runInWorker.ts';

/** The longest symphony movement we know takes seconds. Chosen after measuring, with room for many marks and a slow machine. */
const LONGEST_MS = 600_000;

/** Reads all parts of a piece by the rules, off the main thread. Parts as `packed` makes them; `onReached` hears the index of each before it is read. */
export function lookThrough(parts: readonly Uint8Array[], options?: RunOptions): Promise<PieceAnswer[]> {
  return runInWorker('checkPiece', { parts }, { timeLimitMs: LONGEST_MS, ...options });
}
