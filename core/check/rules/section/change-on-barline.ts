import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'section/change-on-barline',
  severity: 'worthALook',
  summary: 'In a staggered passage nobody changes bow on a barline.',
  why: 'The barline is where everyone would change by habit, and where the ear expects it.',
  source: ['common-practice', 'chosen'],
  messages: {
    onBarline: '{Who}: the bow change falls on the barline of {where}, inside a staggered passage. Move it off the beat, into the measure before or after.',
  },
  check(part, report) {
    for (const passage of part.staggered) {
      for (const { instant, seats } of passage.changes) {
        if (instant.at !== 0) continue;
        const { id, dynamic } = part.voices[passage.voice]![instant.event]!.head;
        report({ message: 'onBarline', measure: instant.measure, notes: [id], seats, exposure: exposureAt(dynamic, part.settings.assumedDynamic), facts: {} });
      }
    }
  },
});
