import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'notation/both-bows-printed',
  severity: 'worthALook',
  summary: 'A note is printed with one bow sign.',
  why: 'Two editors or a change of mind left both signs standing; until the section says which, half of it starts the other way.',
  source: ['common-practice'],
  messages: {
    both: 'In {where} up-bow and down-bow are both printed on one note ({who}). Mark the one your section plays.',
  },
  check(part, report) {
    for (const { head, measure } of part.voices.flat()) {
      const shown = head.technical.filter(({ hidden, detail }) => !hidden && detail?.alternate !== 'yes').map(({ name }) => name);
      if (!shown.includes('up-bow') || !shown.includes('down-bow')) continue;
      const seats = part.groups.filter(({ marksOn }) => marksOn(head.id).bow === undefined).flatMap((group) => group.seats);
      const settled = part.groups.every(({ marksOn }) => marksOn(head.id).bow !== undefined);
      if (!settled) report({ message: 'both', measure, notes: [head.id], seats, exposure: exposureAt(head.dynamic, part.settings.assumedDynamic), facts: {} });
    }
  },
});
