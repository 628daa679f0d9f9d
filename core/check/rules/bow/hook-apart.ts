import type { BowEvent } from '../../../bowing/events.ts';
import { type Stroke, turned } from '../../../bowing/strokes.ts';
import { bySeats } from '../../bySeats.ts';
import type { Players } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';

/** Bowed, and not parted from the hooked note by more silence than a hook goes across. */
const near = (from: BowEvent | undefined, to: BowEvent | undefined, rest: number): boolean =>
  from !== undefined && to !== undefined && !from.head.pizzicato && !to.head.pizzicato && to.start - from.end < rest;

const strokeAt = (strokes: readonly Stroke[], event: number): Stroke | undefined => strokes.findLast(({ begins }) => begins.event <= event);

export default defineRule({
  id: 'bow/hook-apart',
  severity: 'worthALook',
  summary: 'A hooked note has a bow beside it that goes the same way.',
  why: 'A hook takes two notes on one direction of the bow. Alone, or between bows that go opposite ways, it only makes players ask.',
  source: ['green', 'chosen'],
  messages: {
    alone: 'In {where} a hook stands on a note with no bowed note within {rest} s before or after it ({who}). Move the hook to the note it is meant for, or rub it out.',
    otherWay: 'In {where} a hooked note is marked {bow}-bow, but the bow before it goes {other} ({who}). Turn one of the two signs round, or rub the hook out.',
  },
  check(part, report) {
    const { hookRest, assumedDynamic } = part.settings;
    part.voices.forEach((voice, index) => {
      voice.forEach((event, at) => {
        const [before, next] = [voice[at - 1], voice[at + 1]];
        const fault = ({ marksOn, strokes }: Players): 'alone' | 'up' | 'down' | null => {
          const { hooked, bow } = marksOn(event.head.id);
          if (!hooked || event.head.pizzicato) return null;
          if (!near(before, event, hookRest)) return near(event, next, hookRest) ? null : 'alone';
          if (!bow || (next && marksOn(next.head.id).bow === bow)) return null;
          const direction = strokeAt(strokes[index]!, at - 1)?.direction;
          return direction && direction !== bow ? bow : null;
        };
        for (const { value, seats } of bySeats(part.groups, fault)) {
          const place = { measure: event.measure, seats, exposure: exposureAt(event.head.dynamic, assumedDynamic), place: `${event.head.id}/${value}` };
          if (value === 'alone') report({ ...place, message: 'alone', notes: [event.head.id], facts: { rest: hookRest } });
          else report({ ...place, message: 'otherWay', notes: [event.head.id, before!.head.id], facts: { bow: value, other: turned(value) } });
        }
      });
    });
  },
});
