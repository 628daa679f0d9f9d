import { isOutside, partnerOf, type SeatId } from '../../../music/seat.ts';
import { exposureOfScore } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';
import { type Shift, shiftReader } from '../../shifts.ts';

/** However short the part, this many are worth saying. Chosen, not measured. */
const ALWAYS = 3;

export default defineRule({
  id: 'desk/partners-shift-together',
  severity: 'worthALook',
  summary: 'Desk partners do not both make an exposed shift on the same note under one slur.',
  why: 'Two hands sliding at once are heard as one slide. It happens often, so only the most exposed places are named.',
  source: ['tnua', 'chosen'],
  messages: {
    together: '{Who}: both partners shift about {distance} on the same note, {pitch} in {where}, under one slur. One of them could shift on another note or stay on another string.',
  },
  most: ({ shiftsAtMost }, measures) => Math.max(ALWAYS, Math.ceil((measures * shiftsAtMost) / 100)),
  check(part, report) {
    const { shiftScore } = part.settings;
    const made = new Map<SeatId, Map<string, Shift>>();
    const shiftsOf = shiftReader(part);
    for (const group of part.groups) {
      const shifts = new Map(shiftsOf(group).map((shift) => [shift.event.head.id, shift]));
      for (const seat of group.seats) made.set(seat, shifts);
    }
    const shared = new Map<string, { shift: Shift; seats: SeatId[] }>();
    for (const seat of part.seats.filter(isOutside)) {
      const partner = made.get(partnerOf(seat));
      for (const [note, shift] of made.get(seat)!) {
        const other = partner?.get(note);
        if (!other || Math.min(shift.score, other.score) < shiftScore) continue;
        const less = other.score < shift.score ? other : shift;
        const same = shared.get(note);
        if (!same) shared.set(note, { shift: less, seats: [seat, partnerOf(seat)] });
        else {
          same.seats.push(seat, partnerOf(seat));
          if (less.score > same.shift.score) same.shift = less;
        }
      }
    }
    for (const { shift, seats } of shared.values()) {
      const { head } = shift.event;
      report({
        message: 'together',
        measure: shift.event.measure,
        notes: [head.id, shift.from.head.id],
        seats,
        rank: shift.score,
        exposure: exposureOfScore(shift.score),
        facts: { distance: { count: Math.round(shift.moves), of: 'semitone' }, pitch: { pitch: head.pitch! } },
      });
    }
  },
});
