import { harmonicSounding, harmonicTouched } from '../../../hand/harmonics.ts';
import { semitonesAbove } from '../../../hand/place.ts';
import type { StringNumber } from '../../../instruments/instrument.ts';
import { soundingOf } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { fingeredNotes } from '../../fingeredNotes.ts';
import { defineRule } from '../../rule.ts';

const STRINGS: readonly StringNumber[] = [1, 2, 3, 4];
/** Above a stopped note a light finger finds a node a minor or major third, a fourth, a fifth or an octave up. */
const TOUCHED_ABOVE = new Set([3, 4, 5, 7, 12]);

export default defineRule({
  id: 'fingering/harmonic-node',
  severity: 'worthALook',
  summary: 'A note marked as a harmonic has a node to be touched.',
  why: 'Off a node a light finger gives no harmonic. Natural harmonics are read as sounding or as touched, whichever fits some string; artificial ones only where both the stopped and the touched note are written.',
  source: ['common-practice', 'martens'],
  messages: {
    noString: 'In {where} {pitch} is marked as a natural harmonic, but no string has one there, sounding or touched. Write it as an artificial harmonic, or finger it.',
    noNode: 'In {where} the artificial harmonic touches {pitch}, {distance} semitones above the stopped note, where there is no node. Touch a third, a fourth or a fifth above.',
  },
  check(part, report) {
    const { instrument, settings } = part;
    for (const { event, marks, seats } of fingeredNotes(part, (on) => on.harmonic !== undefined && on.string === undefined)) {
      const midi = soundingOf(event);
      const { pitch, id, dynamic } = event.head;
      if (midi === undefined || !pitch) continue;
      const place = { measure: event.measure, notes: [id], seats, exposure: exposureAt(dynamic, settings.assumedDynamic), place: `${id}/${marks.harmonic!}` };
      if (marks.harmonic === 'natural') {
        const hasOne = STRINGS.some((string) => {
          const above = semitonesAbove(instrument, string, midi);
          return above === 0 || harmonicSounding(above) !== null || harmonicTouched(above) !== null;
        });
        if (!hasOne) report({ ...place, message: 'noString', facts: { pitch: { pitch } } });
        continue;
      }
      const below = event.notes.length === 2 ? event.notes.find((note) => note.id !== id) : undefined;
      const distance = below?.midi === undefined ? null : event.head.midi! - below.midi;
      if (distance !== null && distance > 0 && distance <= 12 && !TOUCHED_ABOVE.has(distance)) report({ ...place, message: 'noNode', facts: { pitch: { pitch }, distance } });
    }
  },
});
