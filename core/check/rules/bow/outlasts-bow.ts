import { bowDynamic, bowUsed } from '../../../bowing/bowLength.ts';
import type { Stroke } from '../../../bowing/strokes.ts';
import type { SeatId } from '../../../music/seat.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

interface TooLong {
  /** The longest of them. */
  stroke: Stroke;
  used: number;
  seats: Set<SeatId>;
}

const tenths = (value: number): number => Math.round(value * 10) / 10;
const headOf = (stroke: Stroke) => stroke.pieces[0]!.event.head;

/** Id of the first note of the printed bow each event belongs to. */
function printedStarts(printed: readonly Stroke[], events: number): string[] {
  const starts = new Array<string>(events).fill('');
  for (const stroke of printed) starts.fill(headOf(stroke).id, stroke.begins.event, stroke.lastEvent + 1);
  return starts;
}

export default defineRule({
  id: 'bow/outlasts-bow',
  severity: 'worthALook',
  summary: 'A slur or a held note fits on one bow at its dynamic and tempo.',
  why: 'Whoever runs out of bow changes where it can be heard, or has no sound left for the end of the phrase.',
  source: ['hoffmann', 'chosen'],
  messages: {
    needsMore: 'From {where} one bow has to last {seconds} s at {dynamic}{tempo}, where a bow lasts about {bow} s ({who}). Mark a bow change, or split the slur.',
    outOfReach: 'From {where} one bow would have to last {seconds} s at {dynamic}{tempo}, where a bow lasts about {bow} s ({who}): not to be played as written. Mark bow changes, or split the slur.',
  },
  check(part, report) {
    const { instrument, settings } = part;
    const found = new Map<string, TooLong>();
    part.voices.forEach((voice, index) => {
      const starts = printedStarts(part.printed[index]!, voice.length);
      for (const group of part.groups) {
        for (const stroke of group.strokes[index]!) {
          const used = bowUsed(stroke, instrument, settings.bowSeconds, settings.assumedDynamic);
          if (used <= settings.bowsBeforeSpeaking) continue;
          const place = starts[stroke.begins.event]!;
          const known = found.get(place);
          const worse = known && known.used >= used ? known : { stroke, used };
          found.set(place, { ...worse, seats: new Set([...(known?.seats ?? []), ...group.seats]) });
        }
      }
    });
    for (const [place, { stroke, used, seats }] of found) {
      const { dynamic } = headOf(stroke);
      const seconds = stroke.pieces.reduce((sum, piece) => sum + piece.seconds, 0);
      const finding = {
        place,
        measure: stroke.begins.measure,
        notes: [...new Set(stroke.pieces.map(({ event }) => event.head.id))],
        seats: part.seats.filter((seat) => seats.has(seat)),
        exposure: exposureAt(dynamic, settings.assumedDynamic),
        facts: {
          seconds: tenths(seconds),
          dynamic: dynamic ?? { assumedDynamic: bowDynamic(dynamic, settings.assumedDynamic) },
          bow: tenths(seconds / used),
          tempo: part.tempo.isAssumed(stroke.pieces[0]!.event.from) ? { assumedTempo: settings.assumedTempo } : '',
        },
      };
      if (used > settings.bowsOutOfReach) report({ ...finding, message: 'outOfReach', severity: 'cannotPlay' });
      else report({ ...finding, message: 'needsMore' });
    }
  },
});
