import { opensBow } from '../../../bowing/events.ts';
import { splits } from '../../../bowing/strokes.ts';
import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';
import type { NoteMarks } from '../../seatMarks.ts';

/** A sign somebody marked, with nothing that says why a bow should begin there. */
const unexplained = (marks: NoteMarks): 'up' | 'down' | null =>
  marks.bow && !marks.bowPrinted && !splits(marks) && !marks.retake && !marks.hooked ? marks.bow : null;

export default defineRule({
  id: 'notation/bow-inside-slur',
  severity: 'worthALook',
  summary: 'A bow sign inside a slur or a tie comes with a split or a bow change.',
  why: 'One player turns the bow at the sign, the next one goes on to the end of the slur. Printed signs are left alone: there the slur is often a phrase.',
  source: ['common-practice'],
  messages: {
    insideSlur: 'In {where} {bow}-bow is marked inside a slur that goes on ({who}). Split the slur or mark a bow change if the bow turns there, or rub the sign out.',
    tiedOver: 'In {where} {bow}-bow is marked on a note that is tied over and sounds already ({who}). Mark a bow change if the bow turns there, or move the sign.',
  },
  check(part, report) {
    for (const voice of part.voices) {
      voice.forEach((event, at) => {
        if (opensBow(voice, at)) return;
        const { id, dynamic, ties } = event.head;
        for (const { value, seats } of bySeats(part.groups, ({ marksOn }) => unexplained(marksOn(id)))) {
          report({ message: ties.includes('stop') ? 'tiedOver' : 'insideSlur', measure: event.measure, notes: [id], seats, exposure: exposureAt(dynamic, part.settings.assumedDynamic), place: `${id}/${value}`, facts: { bow: value } });
        }
      });
    }
  },
});
