import { leastTime } from '../../../hand/moveTime.ts';
import { exposureAt } from '../../exposure.ts';
import { markedSteps } from '../../markedSteps.ts';
import { defineRule } from '../../rule.ts';
import { leastReading } from '../../stepReading.ts';

/** Beyond this much of the time no hand is quick enough, however the least time is reckoned. Chosen, not measured. */
const OUT_OF_REACH = 1.5;

/** Where the part gives no tempo the music may be this many times slower than assumed. Chosen, not measured. */
const SLOWER = 2;

const milliseconds = (seconds: number): number => Math.round(seconds * 1000);

export default defineRule({
  id: 'fingering/shift-in-time',
  severity: 'worthALook',
  summary: 'Between two fingered notes there is time for the shift that they ask for.',
  why: 'A hand that arrives late takes time from the note before or comes in out of tune. Only marked fingers are read: where notes between them bear none, the hand has all of their time, and where the marks leave a string open or the fingers could reach, the easier way is taken.',
  source: ['from-memory', 'tnua', 'chosen'],
  messages: {
    tooFast: 'In {where} {pitch} with finger {finger} asks for a shift of about {mm} mm that needs about {needs} ms; there are {available} ms. Shift earlier, reach for it, or take it on another string.',
    hard: 'In {where} {pitch} with finger {finger} asks for a shift of about {mm} mm in {available} ms, which needs about {needs} ms. An earlier shift would leave more time.',
  },
  check(part, report) {
    const { shiftLoad, assumedDynamic } = part.settings;
    for (const step of markedSteps(part)) {
      const { mm } = leastReading(part.instrument, step);
      const { from, to } = step;
      const [needs, available] = [leastTime(mm), to.event.start - from.event.start];
      const assumed = part.tempo.isAssumed(to.event.from);
      // Notes that a file puts at one time in one voice are no step.
      if (mm === 0 || available <= 0 || needs <= available * shiftLoad * (assumed ? SLOWER : 1)) continue;
      const { head, measure } = to.event;
      const playable = assumed || needs <= available * OUT_OF_REACH;
      report({
        message: needs > available ? 'tooFast' : 'hard',
        severity: playable ? 'worthALook' : 'cannotPlay',
        measure,
        notes: [head.id, from.event.head.id],
        seats: step.seats,
        exposure: exposureAt(head.dynamic, assumedDynamic),
        place: `${head.id}/${from.event.head.id}/${from.finger}${to.finger}`,
        facts: { pitch: { pitch: head.pitch! }, finger: to.finger, mm: Math.round(mm), needs: milliseconds(needs), available: milliseconds(available) },
      });
    }
  },
});
