import { opensBow } from '../../../bowing/events.ts';
import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'notation/retake-inside-slur',
  severity: 'collides',
  summary: 'A retake stands where a bow begins, not inside a slur or on a note that is tied over.',
  why: 'A retake lifts the bow from the string, a slur keeps it there: one of the two signs is not meant, and each player will guess which.',
  source: ['green', 'common-practice'],
  messages: {
    insideSlur: 'In {where} a retake stands inside a slur ({who}). Split the slur there, or move the retake to where the slur begins.',
    tiedOver: 'In {where} a retake stands on a note that is tied over ({who}), so the bow cannot leave the string. Split the tie there, or move the retake.',
  },
  check(part, report) {
    for (const voice of part.voices) {
      voice.forEach((event, at) => {
        if (event.head.grace || opensBow(voice, at)) return;
        const { id, dynamic, ties } = event.head;
        for (const { seats } of bySeats(part.groups, ({ marksOn }) => (marksOn(id).retake && marksOn(id).slur !== 'split') || null)) {
          report({ message: ties.includes('stop') ? 'tiedOver' : 'insideSlur', measure: event.measure, notes: [id], seats, exposure: exposureAt(dynamic, part.settings.assumedDynamic), facts: {} });
        }
      });
    }
  },
});
