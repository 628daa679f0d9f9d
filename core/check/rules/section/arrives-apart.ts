import type { StaggeredPassage } from '../../../bowing/passages.ts';
import type { Stroke } from '../../../bowing/strokes.ts';
import { firstIndex } from '../../../music/firstIndex.ts';
import type { SeatId } from '../../../music/seat.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

interface Arrival {
  /** Direction the bow arrives with, or whether an odd or even number of bows was taken where no sign says a direction. */
  way: string;
  signed: boolean;
}

/** Index of the first bow that begins on this event or later. */
const firstFrom = (strokes: readonly Stroke[], event: number): number => firstIndex(strokes.length, (at) => strokes[at]!.begins.event >= event);

/** How a player whose bows these are arrives after the passage; null where a sign, a retake, silence or a tremolo settles it. */
function arrivalOf(strokes: readonly Stroke[], passage: StaggeredPassage, retakeRest: number): Arrival | null {
  const next = firstFrom(strokes, passage.to + 1);
  const stroke = strokes[next];
  if (!stroke || stroke.begins.event !== passage.to + 1 || stroke.begins.inside || stroke.direction || stroke.retake || stroke.tremolo || stroke.restBefore >= retakeRest) return null;
  const inside = strokes.slice(firstFrom(strokes, passage.from), next);
  if (inside.some(({ retake, hooked, tremolo }) => retake || hooked || tremolo)) return null;
  const sign = inside.findLastIndex(({ direction }) => direction !== null);
  const bows = inside.length - Math.max(0, sign);
  const turned = bows % 2 === 1;
  const from = inside[sign]?.direction;
  return from ? { signed: true, way: (from === 'up') === turned ? 'down' : 'up' } : { signed: false, way: turned ? 'odd' : 'even' };
}

export default defineRule({
  id: 'section/arrives-apart',
  severity: 'worthALook',
  summary: 'After a staggered passage everybody arrives with the same bow.',
  why: 'Who changed once more or once less than the others goes on against them until somebody notices. A sign, a retake or a rest after the passage settles it.',
  source: ['common-practice'],
  messages: {
    apart: '{Who} and the others arrive in {where} with opposite bows after the staggered passage. Mark the direction of that bow for all, or add a bow change for one of the two groups.',
  },
  check(part, report) {
    for (const passage of part.staggered) {
      const arrivals = part.groups.map(({ seats, strokes }) => ({ seats, arrival: arrivalOf(strokes[passage.voice]!, passage, part.settings.retakeRest) }));
      if (arrivals.some(({ arrival }) => !arrival) || new Set(arrivals.map(({ arrival }) => arrival!.signed)).size > 1) continue;
      const ways = new Map<string, SeatId[]>();
      for (const { seats, arrival } of arrivals) ways.set(arrival!.way, [...(ways.get(arrival!.way) ?? []), ...seats]);
      if (ways.size < 2) continue;
      const fewer = new Set([...ways.values()].sort((a, b) => a.length - b.length)[0]);
      const { head, measure } = part.voices[passage.voice]![passage.to + 1]!;
      report({ message: 'apart', measure, notes: [head.id], seats: part.seats.filter((seat) => fewer.has(seat)), exposure: exposureAt(head.dynamic, part.settings.assumedDynamic), facts: {} });
    }
  },
});
