import type { Mark } from '../../music/mark.ts';
import type { BowEvent } from '../events.ts';
import { RETAKE_REST } from '../strokes.ts';
import type { StrokeFacts } from './facts.ts';
import { isHookable } from './hooks.ts';
import type { Bowing } from './inferDirections.ts';
import { metricLevel } from '../../music/metre.ts';
import type { Measure } from '../../music/part.ts';
import { quarters } from '../../music/time.ts';

const soundingHead = ({ stroke }: StrokeFacts): BowEvent => (stroke.pieces.find(({ event }) => !event.head.grace) ?? stroke.pieces[0]!).event;

/** Where a slur is best split: on the strongest place, of several the one nearest its middle. */
function splitAt({ stroke }: StrokeFacts, measures: ReadonlyMap<number, Measure>): BowEvent {
  const events = stroke.pieces.map(({ event }) => event).filter(({ head }) => !head.grace);
  const middle = (events[0]!.from + events.at(-1)!.to) / 2;
  const rank = (event: BowEvent): number => metricLevel(measures.get(event.measure)!, quarters(event.head.onset)) * 1e6 + Math.abs(event.from - middle);
  return events.slice(1).reduce((best, event) => (rank(event) < rank(best) ? event : best));
}

/**
 * A bowing as proposed marks: a sign where a bow does not simply go the other way than the one before or follows a rest, with a retake or a hook where it
 * repeats without time to show it, and the splits of slurs. What is marked already is not marked again. `measures` by ordinal.
 * Example: two down-bows in a row give a retake and a down-bow on the second.
 */
export function bowingMarks(bowing: Bowing, measures: ReadonlyMap<number, Measure>): Mark[] {
  return bowing.strokes.flatMap(({ facts, direction, split, repeats }, i): Mark[] => {
    const note = soundingHead(facts).head.id;
    const before = bowing.strokes[i - 1];
    const marks: Mark[] = [];
    // Over a rest too short to be sure of it the bow brought back is said as well.
    const broughtBack = before && facts.restBefore > 0 && facts.silence < RETAKE_REST && (before.direction === direction) !== (before.split === true);
    if (before && (repeats || broughtBack) && !facts.stroke.retake && !before.facts.stroke.hooked) {
      if (repeats && isHookable(before.facts, facts)) return [{ note, value: { kind: 'hooked' } }];
      marks.push({ note, value: { kind: 'retake' } });
    }
    if (facts.stroke.direction === null && (repeats || facts.restBefore > 0)) marks.push({ note, value: { kind: 'bow', bow: direction } });
    if (split) marks.push({ note: splitAt(facts, measures).head.id, value: { kind: 'slur', slur: 'split' } });
    return marks;
  });
}
