import type { Term } from './term.ts';

/** Open strings; twice on notes long enough to want vibrato. */
export const openString: Term = {
  name: 'open-string',
  unit: 'open notes',
  source: 'common practice, no source; a long note is one of 0.6 s, chosen, not measured',
  place: (_player, place, seconds) => (place.finger !== 0 ? 0 : seconds > 0.6 ? 2 : 1),
};
