import { bowedApart } from '../../bowedApart.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'section/bowed-apart',
  severity: 'worthALook',
  summary: 'The desks of a section begin a bow in the same direction, outside staggered passages.',
  why: 'Bows that go against each other are the first thing a hall sees, and the accents fall apart. Where the two partners of a desk differ, the desk’s own rule speaks.',
  source: ['common-practice'],
  messages: {
    apart: 'In {where} {up} is marked up-bow and {down} down-bow. Turn the signs of one group round, unless the two ways are meant.',
  },
  check(part, report) {
    for (const { event, up, down, splitDesks } of bowedApart(part)) {
      if (splitDesks.length) continue;
      const { id, dynamic } = event.head;
      report({
        message: 'apart',
        measure: event.measure,
        notes: [id],
        seats: part.seats.filter((seat) => up.includes(seat) || down.includes(seat)),
        exposure: exposureAt(dynamic, part.settings.assumedDynamic),
        facts: { up: { seats: up }, down: { seats: down } },
      });
    }
  },
});
