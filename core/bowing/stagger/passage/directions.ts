import type { Seconds } from '../../../music/seconds.ts';
import { type Direction, type Stroke, turned } from '../../strokes.ts';

export interface StretchEnds {
  start: Direction;
  /** Direction of the last bow; null where a rest follows and any will do. */
  end: Direction | null;
}

const after = (direction: Direction, bows: number): Direction => (bows % 2 === 0 ? direction : turned(direction));

/** Whether the bow before this one says nothing about its direction. */
const isFree = (strokes: readonly Stroke[], index: number, retakeRest: Seconds): boolean => {
  const [before, stroke] = [strokes[index - 1], strokes[index]];
  return !before || !stroke || stroke.retake || stroke.restBefore >= retakeRest || before.hooked || before.tremolo || stroke.tremolo;
};

/**
 * Which way everybody's bow goes at the beginning and at the end of a stretch, so that the bows before and after it can stay as they are: counted
 * from the nearest sign, down where nothing says it; at the end such that the next bow comes out as marked, or down where it is not.
 * @param strokes the bows of one voice as all have them
 * @param first index of the stretch's first bow among them; `last` of its last one
 * @param retakeRest seconds of silence after which a bow may begin either way
 * Example: two unmarked bows after a down-bow is a stretch that starts up.
 */
export function endsOf(strokes: readonly Stroke[], first: number, last: number, retakeRest: Seconds): StretchEnds {
  let start: Direction = strokes[first]!.direction ?? 'down';
  for (let k = first; strokes[first]!.direction === null && k > 0 && !isFree(strokes, k, retakeRest); k--) {
    const sign = strokes[k - 1]!.direction;
    if (!sign) continue;
    start = after(sign, first - (k - 1));
    break;
  }
  if (isFree(strokes, last + 1, retakeRest)) return { start, end: null };
  let next: Direction = 'down';
  for (let k = last + 1; k < strokes.length && !isFree(strokes, k, retakeRest); k++) {
    const sign = strokes[k]!.direction;
    if (!sign) continue;
    next = after(sign, k - (last + 1));
    break;
  }
  return { start, end: turned(next) };
}
