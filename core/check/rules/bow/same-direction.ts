import { type Direction, type Stroke, turned } from '../../../bowing/strokes.ts';
import type { SeatId } from '../../../music/seat.ts';
import { exposureAt } from '../../exposure.ts';
import { beginsAnew } from '../../knownDirections.ts';
import { defineRule } from '../../rule.ts';

interface Clash {
  before: Stroke;
  stroke: Stroke;
  /** Unmarked bows between them. */
  between: number;
}

const headOf = (stroke: Stroke) => stroke.pieces[0]!.event.head;

/** Signs that cannot both hold when every bow between them goes the other way than the one before. */
function clashesIn(strokes: readonly Stroke[], retakeRest: number, counted: number): Clash[] {
  const clashes: Clash[] = [];
  let inRow = false;
  let sign: { stroke: Stroke; direction: Direction; index: number } | null = null;
  strokes.forEach((stroke, index) => {
    if (beginsAnew(strokes, index, retakeRest)) [sign, inRow] = [null, false];
    if (stroke.tremolo || stroke.direction === null) return;
    if (sign) {
      const between = index - sign.index - 1;
      const repeats = (sign.direction === stroke.direction) === (between % 2 === 0);
      const printed = repeats && between === 0 && sign.stroke.printed && stroke.printed;
      // A row of printed signs is one question, asked where the row begins.
      if (repeats && between <= counted && !(printed && inRow)) clashes.push({ before: sign.stroke, stroke, between });
      inRow = printed;
    }
    sign = { stroke, direction: stroke.direction, index };
  });
  return clashes;
}

export default defineRule({
  id: 'bow/same-direction',
  severity: 'collides',
  summary: 'Two bows that follow each other go opposite ways, unless a retake or a hook says otherwise.',
  why: 'Where two signs disagree half of the section follows the first and half the second, and everyone sees it.',
  source: ['common-practice', 'green'],
  messages: {
    twice: 'In {where} two {bow}-bows follow each other ({who}). Mark a retake or a hook there, or turn one of them round.',
    printedTwice: 'In {where} {bow}-bows are printed one after the other. If a retake or a hook is meant, mark it, so that nobody has to ask.',
    miscounted: 'In {where} the bow arrives {other} after {between}, but {bow}-bow is marked ({who}). Mark a retake, a hook or a slur on the way, or turn the sign round.',
  },
  check(part, report) {
    const { settings } = part;
    const found = new Map<string, Clash & { seats: SeatId[] }>();
    for (const group of part.groups) {
      for (const clash of group.strokes.flatMap((strokes) => clashesIn(strokes, settings.retakeRest, settings.strokesCounted))) {
        const key = [headOf(clash.before).id, headOf(clash.stroke).id, clash.stroke.direction, clash.between].join('/');
        const same = found.get(key);
        if (same) same.seats.push(...group.seats);
        else found.set(key, { ...clash, seats: [...group.seats] });
      }
    }
    for (const [key, { before, stroke, between, seats }] of found) {
      const { id, dynamic } = headOf(stroke);
      const exposure = exposureAt(dynamic, settings.assumedDynamic);
      const place = { measure: stroke.begins.measure, notes: [id, headOf(before).id], seats, place: key };
      const bow = stroke.direction!;
      if (between) report({ ...place, message: 'miscounted', severity: 'worthALook', exposure: exposure / 2, facts: { bow, other: turned(bow), between: { count: between, of: 'unmarked bow' } } });
      else if (before.printed && stroke.printed) report({ ...place, message: 'printedTwice', severity: 'worthALook', exposure: exposure / 2, facts: { bow } });
      else report({ ...place, message: 'twice', exposure, facts: { bow } });
    }
  },
});
