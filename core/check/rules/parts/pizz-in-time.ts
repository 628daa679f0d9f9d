import type { BowEvent } from '../../../bowing/events.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

const isSingle = ({ head }: BowEvent): boolean => !head.grace && !head.ornaments.includes('fermata');

export default defineRule({
  id: 'parts/pizz-in-time',
  severity: 'worthALook',
  summary: 'Between a bowed note and a plucked one there is time for the hand to change.',
  why: 'The finger has to leave the bow and come back to it; without the time some players cut the last note short and some come late. Inside and outside can share it.',
  source: ['common-practice', 'chosen'],
  messages: {
    toPizz: 'In {where} pizz. comes {seconds} s after the last bowed note begins{tempo}. Agree who leaves that note out, or share it out by desk.',
    toArco: 'In {where} arco comes {seconds} s after the last plucked note{tempo}. Agree who leaves a note out, or share it out by desk.',
  },
  check(part, report) {
    const { pizzTime, assumedDynamic, assumedTempo } = part.settings;
    for (const voice of part.voices) {
      voice.forEach((event, at) => {
        const before = voice[at - 1];
        if (!before || !isSingle(before) || !isSingle(event) || (before.head.pizzicato ?? false) === (event.head.pizzicato ?? false)) return;
        const seconds = event.start - before.start;
        if (seconds >= pizzTime - 1e-6) return;
        report({
          message: event.head.pizzicato ? 'toPizz' : 'toArco',
          measure: event.measure,
          notes: [event.head.id, before.head.id],
          seats: [],
          exposure: exposureAt(event.head.dynamic, assumedDynamic) / 2,
          facts: { seconds: Math.round(seconds * 100) / 100, tempo: part.tempo.isAssumed(before.from) ? { assumedTempo } : '' },
        });
      });
    }
  },
});
