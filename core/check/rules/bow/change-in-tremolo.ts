import { isTremolo } from '../../../bowing/strokes.ts';
import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'bow/change-in-tremolo',
  severity: 'worthALook',
  summary: 'A tremolo bears no bow change and no hook.',
  why: 'A tremolo is many small bows: a single change in it cannot be heard or seen, so the mark is meant for another note or the tremolo is not one.',
  source: ['common-practice'],
  messages: {
    change: 'In {where} a bow change is marked inside a tremolo ({who}), where the bow changes all the time. Rub it out, or move it to a held note.',
    hook: 'In {where} a tremolo is hooked to the bow before it ({who}), but it has no bow of its own to hook. Rub the hook out, or move it.',
  },
  check(part, report) {
    for (const { head, measure } of part.voices.flat()) {
      if (!isTremolo(head)) continue;
      const readings = bySeats(part.groups, ({ marksOn }) => {
        const { changes, hooked } = marksOn(head.id);
        return changes.length ? 'change' : hooked ? 'hook' : null;
      });
      for (const { value, seats } of readings) {
        report({ message: value, measure, notes: [head.id], seats, exposure: exposureAt(head.dynamic, part.settings.assumedDynamic), place: `${head.id}/${value}`, facts: {} });
      }
    }
  },
});
