import { EVENNESS } from './costs/evenness.ts';

/** What a rule or cost that ties players together is worth: its price never goes higher. */
export interface Worth {
  crowd: number;
  stretch: number;
}

/** Crowding at more than moving anybody's change costs, little enough to stay exact (chosen, not measured); evenness at its points. */
export const FULL_WORTH: Worth = { crowd: 1000, stretch: EVENNESS };
/** Only the crowding itself: one for each change too many. */
export const CROWDING_ONLY: Worth = { crowd: 1, stretch: 0 };
