import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'fingering/trill-finger',
  severity: 'worthALook',
  summary: 'A trilled note leaves a finger free to trill with.',
  why: 'Above the fourth finger there is none: the trill would be shaken by the whole hand, or each player refingers it alone. A trill of an open string is left alone.',
  source: ['common-practice'],
  messages: {
    fourth: 'In {where} a trill stands on a note with finger 4 ({who}), so no finger is left to trill with. Take the note with a lower finger, in a higher position.',
  },
  check(part, report) {
    for (const { head, notes, measure } of part.voices.flat()) {
      if (!head.ornaments.includes('trill-mark') || notes.length > 1) continue;
      for (const { seats } of bySeats(part.groups, ({ marksOn }) => {
        const { finger, substitution, harmonic } = marksOn(head.id);
        return (!harmonic && (substitution ?? finger) === 4) || null;
      })) {
        report({ message: 'fourth', measure, notes: [head.id], seats, exposure: exposureAt(head.dynamic, part.settings.assumedDynamic) / 2, facts: {} });
      }
    }
  },
});
