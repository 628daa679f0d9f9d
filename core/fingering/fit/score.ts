import type { Place } from '../frame.ts';
import type { Context } from './context.ts';
import { contourFeatures } from './features/contour.ts';
import { figureFeatures } from './features/figure.ts';
import { moveFeatures } from './features/move.ts';
import { placeFeatures } from './features/place.ts';
import { spellingFeatures } from './features/spelling.ts';
import { timingFeatures } from './features/timing.ts';
import type { Slots } from './slots.ts';
import { fillStep, type Step } from './step.ts';

/** The weight slots of one place for one note. */
export function placeSlots(slots: Slots, context: Context, place: Place): void {
  slots.clear();
  placeFeatures(slots, context, place);
  contourFeatures(slots, context, place);
}

/** The weight slots of one step between two notes. `step` is room to work in. */
export function stepSlots(slots: Slots, step: Step, before: Context, context: Context, a: Place, b: Place): void {
  slots.clear();
  fillStep(step, a, b);
  moveFeatures(slots, before, context, step);
  timingFeatures(slots, before, context, step);
  spellingFeatures(slots, before, context, step);
  figureFeatures(slots, before, context, step);
}
