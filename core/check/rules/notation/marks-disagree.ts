import { splits } from '../../../bowing/strokes.ts';
import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';
import type { NoteMarks } from '../../seatMarks.ts';

type Disagreement = 'hookAndRetake' | 'hookAndSplit' | 'joinThenNew';

/** What cannot be true together of the signs on a note and on the one before it. */
function disagreement(marks: NoteMarks, before: NoteMarks | null): Disagreement | null {
  if (marks.hooked && marks.retake) return 'hookAndRetake';
  if (marks.hooked && splits(marks)) return 'hookAndSplit';
  // A join for all with a change for one seat is how a staggered passage is written.
  return before?.slur === 'join' && (marks.slur === 'split' || marks.retake) ? 'joinThenNew' : null;
}

export default defineRule({
  id: 'notation/marks-disagree',
  severity: 'collides',
  summary: 'The signs on a note can all be followed at once.',
  why: 'Signs that were agreed one by one can contradict each other on the page; who plays from it can only follow one of them.',
  source: ['green', 'common-practice'],
  messages: {
    hookAndRetake: 'In {where} one note bears a hook and a retake ({who}): the bow cannot stay and be brought back at once. Rub one of them out.',
    hookAndSplit: 'In {where} one note is hooked to the bow before it and begins a new bow as well ({who}). Rub out the hook, or the split or change.',
    joinThenNew: 'In {where} the note before is joined to this one, which begins a new bow ({who}). Rub out the join, or what begins the bow.',
  },
  check(part, report) {
    for (const voice of part.voices) {
      voice.forEach((event, at) => {
        const before = voice[at - 1]?.head.id;
        for (const { value, seats } of bySeats(part.groups, ({ marksOn }) => disagreement(marksOn(event.head.id), before === undefined ? null : marksOn(before)))) {
          report({ message: value, measure: event.measure, notes: value === 'joinThenNew' ? [event.head.id, before!] : [event.head.id], seats, exposure: exposureAt(event.head.dynamic, part.settings.assumedDynamic), place: `${event.head.id}/${value}`, facts: {} });
        }
      });
    }
  },
});
