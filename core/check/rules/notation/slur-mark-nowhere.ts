import type { BowEvent } from '../../../bowing/events.ts';
import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

/** Silence shorter than this parts nothing: rounding of written time. */
const TOUCHING = 1e-6;

type Nowhere = 'splitsNothing' | 'joinsNothing' | 'joinsRest';

/** Why a split or a join on this note changes nothing; null where it does. */
function nowhere(slur: 'split' | 'join', event: BowEvent, next: BowEvent | undefined): Nowhere | null {
  if (slur === 'split') return event.bound ? null : 'splitsNothing';
  if (!next || next.bound || event.head.pizzicato || next.head.pizzicato) return 'joinsNothing';
  return next.start - event.end > TOUCHING ? 'joinsRest' : null;
}

export default defineRule({
  id: 'notation/slur-mark-nowhere',
  severity: 'worthALook',
  summary: 'A slur is split where there is one, and joined where the next note can follow on the same bow.',
  why: 'A split or a join that changes nothing was mostly meant for the note beside it.',
  source: ['common-practice'],
  messages: {
    splitsNothing: 'In {where} a slur is split on a note that no slur or tie reaches ({who}). Move the split to a note inside a slur, or rub it out.',
    joinsNothing: 'In {where} a slur is joined to what follows, but there is nothing to join ({who}). Move it to the last note of a slur, or rub it out.',
    joinsRest: 'In {where} a slur is joined over a rest ({who}): the bow stops there, so two bows are played. Mark a hook if the bow goes on the same way, or rub it out.',
  },
  check(part, report) {
    for (const voice of part.voices) {
      voice.forEach((event, at) => {
        const { id, dynamic } = event.head;
        const next = voice[at + 1];
        for (const { value, seats } of bySeats(part.groups, ({ marksOn }) => {
          const { slur } = marksOn(id);
          return slur ? nowhere(slur, event, next) : null;
        })) {
          report({ message: value, measure: event.measure, notes: [id], seats, exposure: exposureAt(dynamic, part.settings.assumedDynamic), place: `${id}/${value}`, facts: {} });
        }
      });
    }
  },
});
