import type { Place } from '../frame.ts';

/** What the hand does between two notes, as the fitted features see it. */
export interface Step {
  dp: number;
  ds: number;
  moved: number;
  up: number;
  sameString: number;
  sameFinger: number;
  /** Bit 0: the first is open, bit 1: the second. */
  open: number;
  fA: number;
  fB: number;
  pA: number;
  pB: number;
  /** Semitones along the strings between the two stopped places. */
  along: number;
}

/** Fills `into` with the step from `a` to `b`; reused from call to call. */
export function fillStep(into: Step, a: Place, b: Place): void {
  into.dp = b.position - a.position;
  into.ds = a.string - b.string;
  into.moved = into.dp === 0 ? 0 : 1;
  into.up = into.dp > 0 ? 1 : into.dp < 0 ? 2 : 0;
  into.sameString = into.ds === 0 ? 1 : 0;
  into.sameFinger = a.finger === b.finger ? 1 : 0;
  into.open = (a.finger === 0 ? 1 : 0) + (b.finger === 0 ? 2 : 0);
  into.fA = a.finger;
  into.fB = b.finger;
  into.pA = a.position;
  into.pB = b.position;
  into.along = Math.max(-13, Math.min(13, b.above - a.above));
}

export const emptyStep = (): Step => ({ dp: 0, ds: 0, moved: 0, up: 0, sameString: 0, sameFinger: 0, open: 0, fA: 0, fB: 0, pA: 0, pB: 0, along: 0 });
