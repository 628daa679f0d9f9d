import { stringsFor, semitonesAbove } from '../../../hand/place.ts';
import { soundingOf } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { fingeredNotes } from '../../fingeredNotes.ts';
import { defineRule } from '../../rule.ts';

/** The thumb leaves the neck from about here up, in semitones above the open string: the neck positions end a fifth above it. Chosen, not measured. */
const LOWEST = 5;

export default defineRule({
  id: 'fingering/thumb',
  severity: 'worthALook',
  summary: 'The thumb stops notes on the cello and the double bass, from the body up.',
  why: 'On the violin and the viola it holds the neck, and so it does in the low positions of the large instruments.',
  source: ['davidoff', 'common-practice', 'chosen'],
  messages: {
    holdsTheNeck: 'In {where} {pitch} is marked for the thumb, which holds the neck of this instrument. Give the note another finger.',
    low: 'In {where} {pitch} is marked for the thumb so low on the string that the thumb is behind the neck. Give it another finger or a lower string.',
  },
  check(part, report) {
    const { instrument, settings } = part;
    const large = instrument.name === 'cello' || instrument.name === 'double-bass';
    for (const { event, marks, seats } of fingeredNotes(part, (on) => on.finger === 'thumb' && on.harmonic === undefined)) {
      const midi = soundingOf(event);
      const { pitch, id, dynamic } = event.head;
      if (midi === undefined || !pitch) continue;
      const strings = marks.string === undefined ? stringsFor(instrument, midi) : [marks.string];
      const place = { measure: event.measure, notes: [id], seats, exposure: exposureAt(dynamic, settings.assumedDynamic), place: `${id}/thumb/${marks.string ?? ''}`, facts: { pitch: { pitch } } };
      if (!large) report({ ...place, message: 'holdsTheNeck', severity: 'cannotPlay' });
      else if (strings.length > 0 && strings.every((string) => semitonesAbove(instrument, string, midi) < LOWEST)) report({ ...place, message: 'low' });
    }
  },
});
