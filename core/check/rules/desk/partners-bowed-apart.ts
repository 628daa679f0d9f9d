import { bowedApart } from '../../bowedApart.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'desk/partners-bowed-apart',
  severity: 'collides',
  summary: 'Desk partners begin a bow in the same direction, outside staggered passages.',
  why: 'They share one part and one view: when their bows go against each other both doubt their own.',
  source: ['common-practice'],
  messages: {
    apart: '{Who}: in {where} one partner is marked up-bow and the other down-bow. Turn one of the two signs round.',
  },
  check(part, report) {
    for (const { event, splitDesks } of bowedApart(part)) {
      if (!splitDesks.length) continue;
      const { id, dynamic } = event.head;
      report({ message: 'apart', measure: event.measure, notes: [id], seats: part.seats.filter((seat) => splitDesks.includes(seat)), exposure: exposureAt(dynamic, part.settings.assumedDynamic), facts: {} });
    }
  },
});
