import type { BowEvent, Voice } from '../../../bowing/events.ts';
import { type Stroke, turned } from '../../../bowing/strokes.ts';
import { bySeats } from '../../bySeats.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

/** Only what begins and ends together is meant as one sound. */
const together = (a: BowEvent, b: BowEvent): boolean => Math.abs(a.from - b.from) < 1e-6 && Math.abs(a.to - b.to) < 1e-6 && !a.head.grace && !b.head.grace;

/** Marked directions by the event a bow begins with. */
const directionsOf = (strokes: readonly Stroke[]): Map<number, 'up' | 'down'> =>
  new Map(strokes.flatMap(({ begins, direction, tremolo }) => (direction && !begins.inside && !tremolo ? [[begins.event, direction] as const] : [])));

/** Pairs of events of two voices that sound together, by index. */
function pairsOf(one: Voice, other: Voice): [number, number][] {
  const starts = new Map(other.map((event, index) => [Math.round(event.from * 960), index] as const));
  return one.flatMap((event, index): [number, number][] => {
    const match = starts.get(Math.round(event.from * 960));
    return match !== undefined && together(event, other[match]!) ? [[index, match]] : [];
  });
}

export default defineRule({
  id: 'parts/divided-bowed-against',
  severity: 'worthALook',
  summary: 'Voices of one part that move together are bowed together.',
  why: 'In the same rhythm the voices are meant as one sound, and a player who holds both has only one bow. Voices in different rhythms are left alone.',
  source: ['common-practice'],
  messages: {
    against: 'In {where} the two voices move together but are bowed against each other, {upper}-bow above and {lower}-bow below ({who}). Turn one of the two signs round.',
  },
  check(part, report) {
    if (part.voices.length < 2) return;
    const signs = part.groups.map(({ seats, strokes }) => ({ seats, directions: strokes.map(directionsOf) }));
    part.voices.forEach((one, first) =>
      part.voices.slice(first + 1).forEach((other, offset) => {
        const second = first + 1 + offset;
        for (const [a, b] of pairsOf(one, other)) {
          const readings = bySeats(signs, ({ directions }) => {
            const [upper, lower] = [directions[first]!.get(a), directions[second]!.get(b)];
            return upper && lower && upper !== lower ? upper : null;
          });
          for (const { value, seats } of readings) {
            const [{ head, measure }, below] = [one[a]!, other[b]!];
            report({ message: 'against', measure, notes: [head.id, below.head.id], seats, exposure: exposureAt(head.dynamic, part.settings.assumedDynamic), place: `${head.id}/${below.head.id}/${value}`, facts: { upper: value, lower: turned(value) } });
          }
        }
      }),
    );
  },
});
