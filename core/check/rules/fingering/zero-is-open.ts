import { harmonicSounding } from '../../../hand/harmonics.ts';
import { openStringAt, semitonesAbove } from '../../../hand/place.ts';
import type { Instrument, StringNumber } from '../../../instruments/instrument.ts';
import { soundingOf } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { fingeredNotes } from '../../fingeredNotes.ts';
import { defineRule } from '../../rule.ts';
import { stringNumeral } from '../../words.ts';

const STRINGS: readonly StringNumber[] = [1, 2, 3, 4];

/** A string on which the pitch sounds as a natural harmonic, the highest first; a 0 may then mean "no finger pressed". */
const harmonicStringFor = (instrument: Instrument, midi: number, string: StringNumber | undefined): StringNumber | undefined =>
  (string ? [string] : STRINGS).find((candidate) => harmonicSounding(semitonesAbove(instrument, candidate, midi)));

export default defineRule({
  id: 'fingering/zero-is-open',
  severity: 'cannotPlay',
  summary: 'A note fingered 0 sounds the open pitch of its string.',
  why: 'A 0 over a stopped pitch cannot be played as written, so each player will guess something else.',
  source: ['musicxml-4', 'common-practice'],
  messages: {
    stoppedPitch: 'In {where} {pitch} is fingered 0 on string {string}, but that string sounds {open} when open. Give the note another finger or another string.',
    noOpenString: 'In {where} {pitch} is fingered 0, but no open string has this pitch. Give the note another finger, or mark it as a harmonic if one is touched there.',
    perhapsHarmonic: 'In {where} {pitch} is fingered 0 and is no open string; as a natural harmonic it belongs to string {string}. If that is meant, mark it as a harmonic.',
  },
  check(part, report) {
    const { instrument, settings } = part;
    for (const { event, marks, seats } of fingeredNotes(part, (on) => on.finger === 0)) {
      const midi = soundingOf(event);
      const { pitch } = event.head;
      if (midi === undefined || !pitch || marks.harmonic) continue;
      const open = openStringAt(instrument, midi);
      if (open !== null && (marks.string === undefined || instrument.openStrings[marks.string - 1] === midi)) continue;
      const place = { measure: event.measure, notes: [event.head.id], seats, exposure: exposureAt(event.head.dynamic, settings.assumedDynamic), place: `${event.head.id}/${marks.finger ?? ''}/${marks.string ?? ''}/${marks.harmonic ?? ''}` };
      const harmonic = harmonicStringFor(instrument, midi, marks.string);
      const name = { pitch };
      if (harmonic) report({ ...place, message: 'perhapsHarmonic', severity: 'worthALook', facts: { pitch: name, string: stringNumeral(harmonic) } });
      else if (marks.string) report({ ...place, message: 'stoppedPitch', facts: { pitch: name, string: stringNumeral(marks.string), open: instrument.stringNames[marks.string - 1]! } });
      else report({ ...place, message: 'noOpenString', facts: { pitch: name } });
    }
  },
});
