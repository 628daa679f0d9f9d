import type { OwnChange } from '../../../bowing/passages.ts';
import { SAME_TIME } from '../../../bowing/stagger/problem.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

/** The fullest windows of time, each change in one window at most. */
function crowds(changes: readonly OwnChange[], within: number, allowed: number): OwnChange[][] {
  const found: OwnChange[][] = [];
  const playersIn = (window: readonly OwnChange[]) => new Set(window.flatMap((change) => change.seats)).size;
  for (let first = 0; first < changes.length; ) {
    const window = changes.filter((change, index) => index >= first && change.instant.second - changes[first]!.instant.second < within - SAME_TIME);
    if (playersIn(window) <= allowed) {
      first++;
      continue;
    }
    const later = changes.filter((change, index) => index > first && change.instant.second - changes[first + 1]!.instant.second < within - SAME_TIME);
    if (changes[first + 1] && playersIn(later) > playersIn(window)) first++;
    else {
      found.push(window);
      first += window.length;
    }
  }
  return found;
}

export default defineRule({
  id: 'section/too-many-at-once',
  severity: 'collides',
  summary: 'In a staggered passage only a small share of the section changes bow at one moment.',
  why: 'A change is hidden by those who go on; when many change together the line breaks after all.',
  source: ['stringsection', 'chosen'],
  messages: {
    crowd: 'In {where} {count} players change bow within {within} s ({who}), where {allowed} at most stay hidden. Move some of these changes.',
  },
  check(part, report) {
    const { togetherWithin, togetherShare, assumedDynamic } = part.settings;
    const allowed = Math.max(1, Math.floor(part.seats.length * togetherShare));
    for (const passage of part.staggered) {
      for (const crowd of crowds(passage.changes, togetherWithin, allowed)) {
        const { instant } = crowd[0]!;
        const heads = crowd.map((change) => part.voices[passage.voice]![change.instant.event]!.head);
        const seats = part.seats.filter((seat) => crowd.some((change) => change.seats.includes(seat)));
        report({
          message: 'crowd',
          measure: instant.measure,
          notes: [...new Set(heads.map((head) => head.id))],
          seats,
          exposure: exposureAt(heads[0]!.dynamic, assumedDynamic),
          place: `${heads[0]!.id}@${instant.at}`,
          facts: { count: seats.length, within: togetherWithin, allowed },
        });
      }
    }
  },
});
