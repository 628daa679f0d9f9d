import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';
import type { NoteMarks } from '../../seatMarks.ts';

type Found = 'sign' | 'printedSign' | 'manner';

function found({ bow, bowPrinted, retake, hooked, slur, changes }: NoteMarks): Found | null {
  if (retake || hooked || slur || changes.length) return 'manner';
  if (!bow) return null;
  return bowPrinted ? 'printedSign' : 'sign';
}

export default defineRule({
  id: 'bow/plucked',
  severity: 'collides',
  summary: 'A plucked note bears no sign for the bow.',
  why: 'Either the sign belongs to another note, or the bow is meant again and nobody has written arco.',
  source: ['common-practice'],
  messages: {
    sign: 'In {where} a note bears a bow sign but is still plucked ({who}). Write arco if the bow is meant, or move the sign to the note it belongs to.',
    printedSign: 'In {where} a bow sign is printed over a note that is still plucked. If arco is meant there, write it in, so that nobody has to ask.',
    manner: 'In {where} a note bears a sign for how the bow is taken but is still plucked ({who}). Move the sign to a bowed note, or rub it out.',
  },
  check(part, report) {
    for (const { head, measure } of part.voices.flat()) {
      if (!head.pizzicato) continue;
      for (const { value, seats } of bySeats(part.groups, ({ marksOn }) => found(marksOn(head.id)))) {
        report({ message: value, measure, notes: [head.id], seats, exposure: exposureAt(head.dynamic, part.settings.assumedDynamic), place: `${head.id}/${value}`, facts: {}, ...(value === 'printedSign' ? { severity: 'worthALook' as const } : {}) });
      }
    }
  },
});
