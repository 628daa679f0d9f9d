import type { Place } from '../frame.ts';
import type { LineNote } from '../line.ts';
import type { Player } from '../steps/player.ts';
import type { HandStep } from '../steps/step.ts';
import type { StepTiming } from '../steps/timing.ts';

/** One cost of a fingering. Values are in the stated unit before they are weighed. */
export interface Term {
  name: string;
  unit: string;
  /** Where the measure comes from. */
  source: string;
  place?(player: Player, place: Place, seconds: number, note: LineNote): number;
  /** False where every step in this time costs nothing; absent where any may cost. */
  applies?(timing: StepTiming): boolean;
  step?(player: Player, step: HandStep, a: Place, b: Place, timing: StepTiming): number;
}
