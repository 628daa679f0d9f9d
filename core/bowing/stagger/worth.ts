import { EVENNESS } from './costs/evenness.ts';
import { CROWDED } from './draft.ts';

/** What a rule or cost that ties players together is worth: its price never goes higher. */
export interface Worth {
  crowd: number;
  stretch: number;
}

/** Every rule and cost at its worth. */
export const FULL_WORTH: Worth = { crowd: CROWDED, stretch: EVENNESS };
/** Only the crowding itself: one for each change too many. */
export const CROWDING_ONLY: Worth = { crowd: 1, stretch: 0 };
