import { SAME_TIME } from '../../../bowing/stagger/problem.ts';
import type { Instant } from '../../../bowing/strokes.ts';
import { deskOf, isOutside, partnerOf, type SeatId } from '../../../music/seat.ts';
import { quarters } from '../../../music/time.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

const sameStretch = (a: Instant, b: Instant, length: number): boolean =>
  length > 0 && a.measure === b.measure && Math.floor(quarters(a.at) / length) === Math.floor(quarters(b.at) / length);

export default defineRule({
  id: 'desk/partners-change-together',
  severity: 'collides',
  summary: 'Desk partners change bow at different moments in a staggered passage.',
  why: 'Each covers the other’s change; when both change at once the desk has a hole in its sound.',
  source: ['stringsection', 'zlotbox', 'chosen'],
  messages: {
    sameMoment: '{Who}: both players change bow at the same moment in {where}. Move one of the two changes.',
    tooClose: '{Who}: the two players change bow {seconds} s apart in {where}. Keep them at least {least} s apart.',
    sameSubdivision: '{Who}: the two players change bow on the same subdivision of the beat in {where}. Move one of the changes to another one.',
  },
  check(part, report) {
    const { partnersApart, partnersSubdivision, assumedDynamic } = part.settings;
    for (const passage of part.staggered) {
      const made = (seat: SeatId) => passage.changes.filter((change) => change.seats.includes(seat)).map((change) => change.instant);
      for (const seat of part.seats.filter((outside) => isOutside(outside) && part.seats.includes(partnerOf(outside)))) {
        for (const own of made(seat)) {
          for (const other of made(partnerOf(seat))) {
            const apart = Math.abs(own.second - other.second);
            const together = own.measure === other.measure && own.at === other.at;
            if (apart >= partnersApart - SAME_TIME && !sameStretch(own, other, partnersSubdivision)) continue;
            const [first, second] = own.second <= other.second ? [own, other] : [other, own];
            const events = [first, second].map((instant) => part.voices[passage.voice]![instant.event]!.head);
            const place = {
              measure: first.measure,
              notes: [...new Set(events.map((head) => head.id))],
              seats: [seat, partnerOf(seat)],
              exposure: exposureAt(events[0]!.dynamic, assumedDynamic),
              place: `desk ${deskOf(seat)}/${events[0]!.id}@${first.at}-${second.at}`,
            };
            if (together) report({ ...place, message: 'sameMoment', facts: {} });
            else if (apart < partnersApart - SAME_TIME) report({ ...place, message: 'tooClose', facts: { seconds: Math.round(apart * 100) / 100, least: partnersApart } });
            else report({ ...place, message: 'sameSubdivision', facts: {} });
          }
        }
      }
    }
  },
});
