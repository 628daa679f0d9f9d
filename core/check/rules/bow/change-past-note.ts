import { quarters } from '../../../music/time.ts';
import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'bow/change-past-note',
  severity: 'worthALook',
  summary: 'A bow change lies inside the note it is marked on.',
  why: 'A change later than the end of its note is played by nobody. It mostly stems from an edition in which the note was longer.',
  source: ['common-practice'],
  messages: {
    past: 'In {where} a bow change is marked {after} after a note begins that lasts {length} ({who}). Move the change into the note, or put it on the one that follows.',
  },
  check(part, report) {
    for (const { head, measure } of part.voices.flat()) {
      const length = quarters(head.duration);
      const late = bySeats(part.groups, ({ marksOn }) => marksOn(head.id).changes.map(quarters).find((after) => after > 0 && after >= length) ?? null);
      for (const { value, seats } of late) {
        report({
          message: 'past',
          measure,
          notes: [head.id],
          seats,
          exposure: exposureAt(head.dynamic, part.settings.assumedDynamic),
          place: `${head.id}@${value}`,
          facts: { after: { count: value, of: 'quarter' }, length: { count: length, of: 'quarter' } },
        });
      }
    }
  },
});
