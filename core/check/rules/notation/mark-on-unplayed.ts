import type { Note } from '../../../music/part.ts';
import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';
import { marksOnNote, type NoteMarks } from '../../seatMarks.ts';

const says = ({ changes, ...others }: NoteMarks): boolean => changes.length > 0 || Object.keys(others).length > 0;

const kindOf = (note: Note): 'rest' | 'cue' | 'hidden' | null => (note.rest ? 'rest' : note.cue ? 'cue' : note.hidden ? 'hidden' : null);

export default defineRule({
  id: 'notation/mark-on-unplayed',
  severity: 'worthALook',
  summary: 'Marks stand on notes that this part plays.',
  why: 'A mark on a rest, a cue or a note the print does not show reaches nobody, and is mostly meant for the note beside it. What the print itself bears there is left alone.',
  source: ['common-practice'],
  messages: {
    rest: 'In {where} a mark stands on a rest ({who}). Move it to the note it is meant for.',
    cue: 'In {where} a mark stands on a cue, which this part does not play ({who}). Move it to a note of the part.',
    hidden: 'In {where} a mark stands on a note that the print does not show ({who}), so nobody will see it. Move it to a note that is shown.',
  },
  check(part, report) {
    for (const measure of part.measures) {
      for (const note of measure.notes) {
        const kind = kindOf(note);
        if (!kind) continue;
        const printed = JSON.stringify(marksOnNote(note, []));
        for (const { seats } of bySeats(part.groups, ({ marksOn }) => (says(marksOn(note.id)) && JSON.stringify(marksOn(note.id)) !== printed) || null)) {
          report({ message: kind, measure: measure.ordinal, notes: [note.id], seats, exposure: exposureAt(note.dynamic, part.settings.assumedDynamic) / 2, facts: {} });
        }
      }
    }
  },
});
