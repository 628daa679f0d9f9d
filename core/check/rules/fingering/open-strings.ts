import { openStringAt } from '../../../hand/place.ts';
import { soundingOf } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { fingeredNotes } from '../../fingeredNotes.ts';
import { defineRule } from '../../rule.ts';
import { stringNumeral } from '../../words.ts';

export default defineRule({
  id: 'fingering/open-strings',
  severity: 'worthALook',
  summary: 'Open strings are used as the section has settled.',
  why: 'An open string among stopped ones is heard as another colour. Says nothing until the section has settled it; nor of double stops, of notes too short to tell, of the lowest string, which has no other way, and of a string that is marked.',
  source: ['common-practice', 'chosen'],
  messages: {
    avoided: 'In {where} {pitch} is marked open, and this section avoids open strings. Stop it on string {string}, or leave it as an exception.',
    wanted: 'In {where} {pitch} is stopped with finger {finger}, and this section wants open strings. Play it open, or leave it as an exception.',
  },
  check(part, report) {
    const { instrument, settings } = part;
    const { openStrings, openStringFrom } = settings;
    if (openStrings === 'free') return;
    for (const { event, marks, seats } of fingeredNotes(part, (on) => on.finger !== undefined && on.harmonic === undefined)) {
      const midi = soundingOf(event);
      const { pitch, id, dynamic } = event.head;
      if (midi === undefined || !pitch || event.notes.length > 1 || event.end - event.start < openStringFrom) continue;
      const open = openStringAt(instrument, midi);
      if (open === null || open === 4) continue;
      const place = { measure: event.measure, notes: [id], seats, exposure: exposureAt(dynamic, settings.assumedDynamic), place: `${id}/${marks.finger!}` };
      if (openStrings === 'avoided' && marks.finger === 0) report({ ...place, message: 'avoided', facts: { pitch: { pitch }, string: stringNumeral((open + 1) as 2 | 3 | 4) } });
      if (openStrings === 'wanted' && marks.finger !== 0 && marks.finger !== undefined && marks.string === undefined && marks.substitution === undefined) report({ ...place, message: 'wanted', facts: { pitch: { pitch }, finger: marks.finger } });
    }
  },
});
