import { reachOf } from '../../hand/reach.ts';
import type { Term } from './term.ts';

/** Reaches past the comfortable zone of a finger pair; past the stretched zone they count ten times. */
export const stretch: Term = {
  name: 'stretch',
  unit: 'share of the way from the comfortable to the stretched limit',
  source: 'limits from what professionals stop (tnua); the tenfold is chosen, not measured',
  step: (player, step, a, b) => {
    if (step.span === 0) return 0;
    const reach = reachOf(player.instrument.name, a.finger, b.finger, player.hand);
    const beyond = Math.max(0, step.span - reach.comfortable) / (reach.stretched - reach.comfortable);
    return beyond <= 1 ? beyond : 10 * beyond;
  },
};
