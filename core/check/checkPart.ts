import { isStringPart } from '../music/part.ts';
import type { CheckInput, Finding } from './finding.ts';
import { standingCheck } from './standing/standingCheck.ts';

/**
 * Everything the rules find in a part as marked: worst first, then most exposed, then in the order of the measures. Empty for a part that is no bowed string part.
 * Model and limits: those of each rule; repeats are read once. Settings that are missing take their defaults; of wrong form they throw (check them with
 * `CheckSettings` where they come in). Same input, same findings. Where marks change one by one, keep a `standingCheck`.
 * Example: `checkPart({ part, seats: seatsFor(12), marks: [], settings: {} })`.
 */
export function checkPart({ part, seats, settings, marks, others }: CheckInput): Finding[] {
  return isStringPart(part) ? standingCheck({ part, seats, settings }).findings(marks, others) : [];
}
