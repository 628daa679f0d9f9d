import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

const hundredths = (value: number): number => Math.round(value * 100) / 100;

export default defineRule({
  id: 'bow/retake-in-time',
  severity: 'worthALook',
  summary: 'A retake leaves time to play the note before it and to bring the bow back.',
  why: 'Without that time the retake arrives late, or the note before it is thrown away, and each player gives up something else.',
  source: ['green', 'chosen'],
  messages: {
    tooFast: 'In {where} the retake comes {seconds} s after the bow before it began{tempo} ({who}), where playing and bringing the bow back take about {needed} s. Play these notes as they come, or hook them.',
  },
  check(part, report) {
    const { retakeTime, assumedDynamic, assumedTempo } = part.settings;
    part.voices.forEach((voice, index) => {
      const places = new Set<number>();
      const fast = part.groups.map(({ seats, strokes }) => {
        const found = new Map<number, number>();
        strokes[index]!.forEach((stroke, place) => {
          const before = strokes[index]![place - 1];
          const seconds = before ? stroke.begins.second - before.begins.second : Infinity;
          if (stroke.retake && seconds < retakeTime - 1e-6) found.set(stroke.begins.event, seconds);
        });
        for (const at of found.keys()) places.add(at);
        return { seats, found };
      });
      for (const at of places) {
        const { head, measure, from } = voice[at]!;
        for (const { value, seats } of bySeats(fast, ({ found }) => found.get(at) ?? null)) {
          report({
            message: 'tooFast',
            measure,
            notes: [head.id],
            seats,
            exposure: exposureAt(head.dynamic, assumedDynamic),
            place: `${head.id}/${hundredths(value)}`,
            facts: { seconds: hundredths(value), needed: retakeTime, tempo: part.tempo.isAssumed(from) ? { assumedTempo } : '' },
          });
        }
      }
    });
  },
});
