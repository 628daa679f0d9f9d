import type { SeatId } from '../../../music/seat.ts';
import { pitchName } from '../../../music/pitch.ts';
import { exposureAt } from '../../exposure.ts';
import { kinIn } from '../../kinIn.ts';
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
  kin: (music) => kinIn(music, music.settings.sameMusicNotes),
  compare(part, { name, pairs }, report) {
    const differing = new Map<number, SeatId[]>();
    const inner = pairs.slice(MARGIN, -MARGIN);
    for (const { seats, marksOn } of part.groups) {
      const at = inner.findIndex(({ model, again }) => {
        const [then, now] = [marksOn(model.head.id).finger, marksOn(again.head.id).finger];
        return then !== undefined && now !== undefined && then !== now;
      });
      if (at !== -1) differing.set(at, [...(differing.get(at) ?? []), ...seats]);
    }
    for (const [at, seats] of differing) {
      const { model, again } = inner[at]!;
      const { marksOn } = part.groups.find((group) => group.seats.length === 0 || seats.includes(group.seats[0]!))!;
      report({
        message: 'differs',
        measure: again.measure,
        notes: [again.head.id, model.head.id],
        seats,
        exposure: exposureAt(again.head.dynamic, part.settings.assumedDynamic),
        place: `${name}/${again.head.id}`,
        facts: { pitch: pitchName(again.head.pitch!), finger: marksOn(again.head.id).finger!, other: marksOn(model.head.id).finger!, before: measureName(part.part.measures[model.measure - 1]!) },
      });
    }
  },
});
