import { partnerOf, type SeatId } from '../../../music/seat.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

export default defineRule({
  id: 'desk/open-beside-stopped',
  severity: 'worthALook',
  summary: 'Where one partner of a desk plays a held note on the open string, the other does as well.',
  why: 'The open string has no vibrato and another colour: side by side the two are heard as two players. Read only where both partners bear a finger.',
  source: ['common-practice', 'chosen'],
  messages: {
    mixed: '{Who}: in {where} one partner plays a note of {seconds} s open and the other stops it. Give both the same.',
  },
  check(part, report) {
    const { openStringFrom, assumedDynamic } = part.settings;
    for (const event of part.voices.flat()) {
      const seconds = event.end - event.start;
      if (part.groups.length < 2 || event.head.pizzicato || seconds < openStringFrom) continue;
      for (const { id, dynamic } of event.notes) {
        const open = new Map<SeatId, boolean>();
        for (const { seats, marksOn } of part.groups) {
          const { finger, harmonic } = marksOn(id);
          if (finger !== undefined && !harmonic) for (const seat of seats) open.set(seat, finger === 0);
        }
        const seats = part.seats.filter((seat) => open.has(seat) && open.has(partnerOf(seat)) && open.get(seat) !== open.get(partnerOf(seat)));
        if (seats.length) report({ message: 'mixed', measure: event.measure, notes: [id], seats, exposure: exposureAt(dynamic, assumedDynamic), facts: { seconds: Math.round(seconds * 10) / 10 } });
      }
    }
  },
});
