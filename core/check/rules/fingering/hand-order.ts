import { handMoves } from '../../../hand/handPlace.ts';
import type { Instrument } from '../../../instruments/instrument.ts';
import { soundingOf } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { type MarkedStep, type MarkedStop, markedSteps } from '../../markedSteps.ts';
import { defineRule } from '../../rule.ts';
import { readingsOf } from '../../stepReading.ts';

/** Both steps are quicker than this, in seconds: a slow line may shift there and back on purpose. Chosen, not measured. */
const QUICK = 0.5;

/** On one string in every reading, and the higher finger on the lower note. */
function isCrossed(instrument: Instrument, step: MarkedStep): boolean {
  const up = Math.sign(soundingOf(step.to.event)! - soundingOf(step.from.event)!);
  if (up === 0 || up !== -Math.sign(step.to.finger - step.from.finger)) return false;
  return readingsOf(instrument, step).every(({ moves, a, b }) => moves > 0 && a.string === b.string);
}

const isQuick = ({ from, to, adjacent }: MarkedStep): boolean => adjacent && to.event.start - from.event.start < QUICK;

/** The hand can stand in one place on both sides of the note between. */
const returns = (instrument: Instrument, there: MarkedStep, back: MarkedStep): boolean =>
  there.from.places.some((a) => back.to.places.some((b) => a.string === b.string && handMoves(instrument, a, b) === 0));

/** Steps by the stop they leave. */
function onwardFrom(steps: readonly MarkedStep[]): Map<MarkedStop, MarkedStep[]> {
  const onward = new Map<MarkedStop, MarkedStep[]>();
  for (const step of steps) onward.set(step.from, [...(onward.get(step.from) ?? []), step]);
  return onward;
}

export default defineRule({
  id: 'fingering/hand-order',
  severity: 'worthALook',
  summary: 'Within one place of the hand a higher finger stops the higher note.',
  why: 'Fingers lie on the string in their order. A finger out of order between two notes of one hand place asks the hand to go and come back at once, which is more often a slip of the pencil than a wish. Read only where all three fingers are marked side by side, quick, and no other string is open to them.',
  source: ['common-practice', 'chosen'],
  messages: {
    crossed: 'In {where} {pitch} bears finger {finger} between two notes of one hand place where it is out of order: the hand would go and come back at once. Perhaps another finger is meant.',
  },
  check(part, report) {
    const steps = markedSteps(part).filter((step) => isQuick(step) && isCrossed(part.instrument, step));
    const onward = onwardFrom(steps);
    for (const there of steps) {
      for (const back of onward.get(there.to) ?? []) {
        const seats = there.seats.filter((seat) => back.seats.includes(seat));
        if ((part.seats.length > 0 && seats.length === 0) || !returns(part.instrument, there, back)) continue;
        const { head, measure } = there.to.event;
        report({
          message: 'crossed',
          measure,
          notes: [head.id, there.from.event.head.id, back.to.event.head.id],
          seats,
          exposure: exposureAt(head.dynamic, part.settings.assumedDynamic),
          facts: { pitch: { pitch: head.pitch! }, finger: there.to.finger },
        });
      }
    }
  },
});
