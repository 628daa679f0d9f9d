import type { Proposal } from '../../../core/agreement/state.ts';
import { votesOn } from './votesOn.ts';

/** First measures of the open ranges gone through since the run began. */
export type Run = readonly number[];

export interface RunStep {
  run: Run;
  /** Where it goes on; null when every open measure has been met. */
  to: number | null;
  /** "the third of seven" while it goes on; at the end both count what was gone through. */
  at: number;
  of: number;
  /** Of those met, how many are open no more. */
  decided: number;
}

/** The next open measure of a run-through: after `here` and round to the first, each met once. After its end a new run begins. `open`: first measures, in order. */
export function stepRun(run: Run, open: readonly number[], here: number): RunStep {
  const ahead = open.filter((from) => !run.includes(from));
  const decided = run.filter((from) => !open.includes(from)).length;
  const to = ahead.find((from) => from > here) ?? ahead[0] ?? null;
  if (to === null) return { run: [], to, at: run.length, of: run.length, decided };
  return { run: [...run, to], to, at: run.length + 1, of: run.length + ahead.length, decided };
}

/** The slip most are for, those against taken off; of equals the one laid first. Undefined where none lies. */
export function leadingOf(slips: readonly Proposal[], measure: number): { slip: Proposal; plus: number; minus: number } | undefined {
  const counted = slips.map((slip) => ({ slip, ...votesOn(slip, measure) }));
  return counted.sort((a, b) => b.plus - b.minus - (a.plus - a.minus) || b.plus - a.plus)[0];
}
