import { harmonicSounding, harmonicTouched } from '../../../hand/harmonics.ts';
import { canSoundOn, semitonesAbove, stringsFor } from '../../../hand/place.ts';
import { soundingOf } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { fingeredNotes } from '../../fingeredNotes.ts';
import { defineRule } from '../../rule.ts';
import { stringNumeral } from '../../words.ts';

export default defineRule({
  id: 'fingering/pitch-on-string',
  severity: 'cannotPlay',
  summary: 'A note marked for a string can sound on that string.',
  why: 'No string sounds below its open pitch, and beyond the fingerboard there is nothing to press it on.',
  source: ['common-practice', 'from-memory'],
  messages: {
    belowString: 'In {where} {pitch} is marked for string {string}, but that string begins at its open {open}. Choose a lower string.',
    beyondFingerboard: 'In {where} {pitch} is marked for string {string}, where it lies beyond the fingerboard. Choose a higher string, or mark it as a harmonic.',
    belowInstrument: 'In {where} {pitch} is fingered, but it lies below the lowest string. If your lowest string reaches it, set that string in the section’s settings.',
    noSuchHarmonic: 'In {where} {pitch} is marked as a natural harmonic on string {string}, which has none there. Choose another string, or mark it as an artificial harmonic.',
  },
  check(part, report) {
    const { instrument, settings } = part;
    for (const { event, marks, seats } of fingeredNotes(part, (on) => on.string !== undefined || on.finger !== undefined)) {
      const midi = soundingOf(event);
      const { pitch } = event.head;
      if (midi === undefined || !pitch) continue;
      const place = { measure: event.measure, notes: [event.head.id], seats, exposure: exposureAt(event.head.dynamic, settings.assumedDynamic), place: `${event.head.id}/${marks.finger ?? ''}/${marks.string ?? ''}/${marks.harmonic ?? ''}` };
      const name = { pitch };
      if (!marks.string) {
        if (midi < instrument.openStrings[3] && !stringsFor(instrument, midi).length) report({ ...place, message: 'belowInstrument', facts: { pitch: name } });
        continue;
      }
      const above = semitonesAbove(instrument, marks.string, midi);
      const string = stringNumeral(marks.string);
      if (above < 0) report({ ...place, message: 'belowString', facts: { pitch: name, string, open: instrument.stringNames[marks.string - 1]! } });
      else if (marks.harmonic === 'natural') {
        if (!harmonicSounding(above) && !harmonicTouched(above)) report({ ...place, message: 'noSuchHarmonic', severity: 'worthALook', facts: { pitch: name, string } });
      } else if (!marks.harmonic && !canSoundOn(instrument, marks.string, midi)) report({ ...place, message: 'beyondFingerboard', facts: { pitch: name, string } });
    }
  },
});
