import type { SeatId } from '../../../music/seat.ts';
import { pitchName } from '../../../music/pitch.ts';
import { exposureAt } from '../../exposure.ts';
import { fingeredPlaces } from '../../fingeredPlaces.ts';
import { repeatedRuns } from '../../repeatedRuns.ts';
import { defineRule } from '../../rule.ts';
import { measureName } from '../../words.ts';

/** What comes before and after may ask for another hand: this many notes at each end of the passage are not compared. Chosen, not measured. */
const MARGIN = 2;

export default defineRule({
  id: 'fingering/same-music',
  severity: 'worthALook',
  summary: 'The same music in one part is fingered the same way.',
  why: 'A passage that comes again is played from habit. Only notes that bear a finger both times are compared, away from the ends of the passage, and each passage is named once.',
  source: ['common-practice', 'chosen'],
  messages: {
    differs: '{Who}: in {where} {pitch} bears finger {finger}, in the same music of {before} finger {other}. Use one fingering for both, or leave it if the difference is wanted.',
  },
  check(part, report) {
    const nameOf = new Map(part.part.measures.map((measure) => [measure.ordinal, measureName(measure)]));
    const fingered = fingeredPlaces(part);
    part.voices.forEach((voice, v) => {
      const places = new Set(fingered[v]);
      if (places.size < 2) return;
      for (const { first, second, length } of repeatedRuns(voice, part.settings.sameMusicNotes)) {
        const both = Array.from({ length: length - 2 * MARGIN }, (_, i) => i + MARGIN).filter((i) => places.has(first + i) && places.has(second + i));
        const differing = new Map<number, SeatId[]>();
        for (const { seats, marksOn } of part.groups) {
          for (const i of both) {
            const [then, now] = [marksOn(voice[first + i]!.head.id).finger, marksOn(voice[second + i]!.head.id).finger];
            if (then === undefined || now === undefined || then === now) continue;
            differing.set(i, [...(differing.get(i) ?? []), ...seats]);
            break;
          }
        }
        for (const [i, seats] of differing) {
          const [model, event] = [voice[first + i]!, voice[second + i]!];
          const { marksOn } = part.groups.find((group) => group.seats.length === 0 || seats.includes(group.seats[0]!))!;
          report({
            message: 'differs',
            measure: event.measure,
            notes: [event.head.id, model.head.id],
            seats,
            exposure: exposureAt(event.head.dynamic, part.settings.assumedDynamic),
            facts: { pitch: pitchName(event.head.pitch!), finger: marksOn(event.head.id).finger!, other: marksOn(model.head.id).finger!, before: nameOf.get(model.measure)! },
          });
        }
      }
    });
  },
});
