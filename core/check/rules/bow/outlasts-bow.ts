import { bowDynamic, bowUsed } from '../../../bowing/bowLength.ts';
import type { Stroke } from '../../../bowing/strokes.ts';
import type { SeatId } from '../../../music/seat.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

const tenths = (value: number): number => Math.round(value * 10) / 10;
const secondsOf = (stroke: Stroke): number => stroke.pieces.reduce((sum, piece) => sum + piece.seconds, 0);

export default defineRule({
  id: 'bow/outlasts-bow',
  severity: 'worthALook',
  summary: 'A slur or a held note fits on one bow at its dynamic and tempo.',
  why: 'Whoever runs out of bow changes where it can be heard, or has no sound left for the end of the phrase.',
  source: ['hoffmann', 'chosen'],
  messages: {
    needsMore: 'From {where} one bow has to last {seconds} s at {dynamic}, about {bows} bows{tempo}. Mark a bow change, or split the slur ({who}).',
    outOfReach: 'From {where} one bow would have to last {seconds} s at {dynamic}, about {bows} bows{tempo}: not to be played as written. Mark bow changes, or split the slur ({who}).',
  },
  check(part, report) {
    const { instrument, settings } = part;
    const found = new Map<string, { stroke: Stroke; used: number; seats: SeatId[] }>();
    for (const group of part.groups) {
      for (const stroke of group.strokes.flat()) {
        const used = bowUsed(stroke, instrument, settings.bowSeconds, settings.assumedDynamic);
        if (used <= settings.bowsBeforeSpeaking) continue;
        const key = `${stroke.pieces[0]!.event.head.id}@${stroke.begins.at}-${stroke.pieces.at(-1)!.event.head.id}+${stroke.cutAfter ?? 'end'}`;
        const same = found.get(key);
        if (same) same.seats.push(...group.seats);
        else found.set(key, { stroke, used, seats: [...group.seats] });
      }
    }
    for (const [key, { stroke, used, seats }] of found) {
      const { head } = stroke.pieces[0]!.event;
      const dynamic = bowDynamic(head.dynamic, settings.assumedDynamic);
      const facts = {
        seconds: tenths(secondsOf(stroke)),
        dynamic: head.dynamic ?? `${dynamic} (none is printed yet)`,
        bows: tenths(used),
        tempo: part.tempo.isAssumed(stroke.pieces[0]!.event.from) ? ` if a quarter goes at ${settings.assumedTempo}` : '',
      };
      const notes = [...new Set(stroke.pieces.map(({ event }) => event.head.id))];
      const place = { measure: stroke.begins.measure, notes, seats, exposure: exposureAt(head.dynamic, settings.assumedDynamic), place: key };
      if (used > settings.bowsOutOfReach) report({ ...place, message: 'outOfReach', severity: 'cannotPlay', facts });
      else report({ ...place, message: 'needsMore', facts });
    }
  },
});
