import type { BowEvent } from '../../../bowing/events.ts';
import type { SeatId } from '../../../music/seat.ts';
import type { Players } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { kinIn } from '../../kinIn.ts';
import { defineRule } from '../../rule.ts';

/** What comes before and after may ask for another hand: this many notes at each end of the passage are not compared. Chosen, not measured. */
const MARGIN = 2;

export default defineRule({
  id: 'fingering/same-music',
  severity: 'worthALook',
  summary: 'The same music in one part is fingered the same way.',
  why: 'A passage that comes again is played from habit. A note that bears a finger is compared with the first time before that bears one, away from the ends of the passage, and each passage is named once.',
  source: ['common-practice', 'chosen'],
  messages: {
    differs: '{Who}: in {where} {pitch} bears finger {finger}, in the same music of {before} finger {other}. Use one fingering for both, or leave it if the difference is wanted.',
  },
  kin: (music) => kinIn(music, music.settings.sameMusicNotes),
  compare(part, { name, pairs }, report) {
    const differing = new Map<string, { model: BowEvent; again: BowEvent; seats: SeatId[]; marksOn: Players['marksOn'] }>();
    const inner = pairs.slice(MARGIN, -MARGIN);
    for (const { seats, marksOn } of part.groups) {
      for (const { models, again } of inner) {
        const now = marksOn(again.head.id).finger;
        const model = now === undefined ? undefined : models.find(({ head }) => marksOn(head.id).finger !== undefined);
        if (!model || marksOn(model.head.id).finger === now) continue;
        const key = `${again.head.id}/${model.head.id}`;
        const same = differing.get(key);
        if (same) same.seats.push(...seats);
        else differing.set(key, { model, again, seats: [...seats], marksOn });
        break;
      }
    }
    for (const [key, { model, again, seats, marksOn }] of differing) {
      report({
        message: 'differs',
        measure: again.measure,
        notes: [again.head.id, model.head.id],
        seats,
        exposure: exposureAt(again.head.dynamic, part.settings.assumedDynamic),
        place: `${name}/${key}`,
        facts: { pitch: { pitch: again.head.pitch! }, finger: marksOn(again.head.id).finger!, other: marksOn(model.head.id).finger!, before: { measure: model.measure } },
      });
    }
  },
});
