import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';
import type { NoteMarks } from '../../seatMarks.ts';

function fault({ finger, substitution, harmonic }: NoteMarks): 'same' | 'open' | null {
  if (finger === undefined || substitution === undefined) return null;
  if (finger === substitution) return 'same';
  return !harmonic && (finger === 0 || substitution === 0) ? 'open' : null;
}

export default defineRule({
  id: 'fingering/substitution',
  severity: 'collides',
  summary: 'Where one finger takes over from another on a held note, the two differ and both stop the string.',
  why: 'A finger cannot take over from itself, and an open string is not held by any finger.',
  source: ['common-practice'],
  messages: {
    same: 'In {where} a finger is to take over from itself on one note ({who}). Write the finger once, or the one that takes over.',
    open: 'In {where} a finger and the open string are to take over from each other on one note ({who}). Stop the note from the beginning, or leave it open.',
  },
  check(part, report) {
    for (const event of part.voices.flat()) {
      for (const { id, dynamic } of event.notes) {
        for (const { value, seats } of bySeats(part.groups, ({ marksOn }) => fault(marksOn(id)))) {
          report({ message: value, measure: event.measure, notes: [id], seats, exposure: exposureAt(dynamic, part.settings.assumedDynamic), place: `${id}/${value}`, facts: {} });
        }
      }
    }
  },
});
