import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'bow/chord-up',
  severity: 'worthALook',
  summary: 'A chord of three or four notes is taken down-bow where the bow is free to begin there.',
  why: 'Such a chord is broken from the frog with the weight of the arm; from the tip the section seldom sounds together. Only a sign the section marked itself is asked about, and only after a rest: among other bows an up-bow may well be meant.',
  source: ['green', 'chosen'],
  messages: {
    up: 'In {where} a chord of {count} notes begins up-bow after a rest ({who}). Turn the sign round if nothing speaks against it.',
  },
  check(part, report) {
    part.voices.forEach((voice, index) => {
      voice.forEach((event, at) => {
        if (event.notes.length < 3 || event.head.pizzicato) return;
        const up = bySeats(part.groups, ({ marksOn, strokes }) => {
          const { bow, bowPrinted, retake } = marksOn(event.head.id);
          if (bow !== 'up' || bowPrinted || retake) return null;
          const stroke = strokes[index]!.find(({ begins }) => begins.event === at && !begins.inside);
          return stroke && stroke.restBefore >= part.settings.retakeRest ? ('up' as const) : null;
        });
        for (const { value, seats } of up) {
          report({ message: value, measure: event.measure, notes: [event.head.id], seats, exposure: exposureAt(event.head.dynamic, part.settings.assumedDynamic) / 2, facts: { count: event.notes.length } });
        }
      });
    });
  },
});
