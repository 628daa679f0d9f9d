import { audibleSlide } from '../../../hand/audibleSlide.ts';
import { slideSeconds } from '../../../hand/moveTime.ts';
import { hertzOf } from '../../../music/pitch.ts';
import { soundingOf } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { type MarkedStep, markedSteps } from '../../markedSteps.ts';
import { defineRule } from '../../rule.ts';
import { readingsOf, type StepReading } from '../../stepReading.ts';

/** However short the part, this many are worth saying. Chosen, not measured. */
const ALWAYS = 1;
/** Signs that ask for the slide. */
const WANTED = new Set(['slide', 'glissando']);

/** Semitones the sounding finger travels: the notes' own distance on one finger, the hand's with two. */
const travelOf = ({ from, to }: MarkedStep, { moves }: StepReading): number => (from.finger === to.finger ? soundingOf(to.event)! - soundingOf(from.event)! : moves);

function indexOf(step: MarkedStep, reading: StepReading, players: number): number {
  if (reading.mm === 0 || reading.a.string !== reading.b.string || soundingOf(step.from.event) === soundingOf(step.to.event)) return 0;
  const hertz = hertzOf(soundingOf(step.to.event)!);
  return audibleSlide({ semitones: travelOf(step, reading), seconds: slideSeconds(reading.mm), players, sliding: step.seats.length || players, hertz }).index;
}

export default defineRule({
  id: 'fingering/exposed-slide',
  severity: 'worthALook',
  summary: 'Of the slides that the section makes together under a slur, the most audible are wanted.',
  why: 'Players who shift together under one bow are heard as one slide. Most are wanted or hidden, so only the worst are named. A slide or glissando that is written is left alone, as is every step that another string or a reach would cover.',
  source: ['thart', 'chosen'],
  messages: {
    slides: '{Who}: the shift of about {distance} into {pitch} in {where} is under one slur on one string, and its slide is heard. If it is not wanted, shift on another note, at the bow change, or take another string.',
  },
  most: ({ slidesAtMost }, measures) => Math.max(ALWAYS, Math.ceil((measures * slidesAtMost) / 100)),
  check(part, report) {
    const { slideHeard, assumedDynamic } = part.settings;
    const players = Math.max(1, part.seats.length);
    const slides = markedSteps(part)
      .filter(({ adjacent, from, to }) => adjacent && to.event.bound && to.marks.slur !== 'split' && to.event.from <= from.event.to && !from.event.head.ornaments.some((ornament) => WANTED.has(ornament)))
      .map((step) => {
        const [least, ...others] = readingsOf(part.instrument, step).map((reading) => ({ reading, index: indexOf(step, reading, players) }));
        return { step, ...others.reduce((best, other) => (other.index < best.index ? other : best), least!) };
      })
      .filter(({ index }) => index >= slideHeard);
    for (const { step, reading, index } of slides) {
      const { head, measure } = step.to.event;
      report({
        message: 'slides',
        measure,
        notes: [head.id, step.from.event.head.id],
        seats: step.seats,
        rank: index * Math.abs(travelOf(step, reading)) * exposureAt(head.dynamic, assumedDynamic),
        exposure: index * exposureAt(head.dynamic, assumedDynamic),
        facts: { distance: { count: Math.max(1, Math.round(Math.abs(travelOf(step, reading)))), of: 'semitone' }, pitch: { pitch: head.pitch! } },
      });
    }
  },
});
