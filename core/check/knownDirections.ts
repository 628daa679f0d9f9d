import { type Direction, type Stroke, turned } from '../bowing/strokes.ts';

export interface KnownDirection {
  direction: Direction;
  /** The sign it comes from is the source's own. */
  printed: boolean;
  /** Bows since that sign; 0 where it stands on the bow itself. */
  counted: number;
}

/** True where the bow may begin anew in any direction: after silence, many small bows, a retake or a hook. `retakeRest` in seconds. */
export const beginsAnew = (strokes: readonly Stroke[], index: number, retakeRest: number): boolean => {
  const { tremolo, retake, restBefore } = strokes[index]!;
  return tremolo || retake || restBefore >= retakeRest || strokes[index - 1]?.hooked === true;
};

/**
 * Which way each bow goes, as far as signs tell: by its own sign, or turn and turn about from a sign at most `atMost` bows before, with nothing between that
 * lets the bow begin anew. Null where nothing tells. Example: a down-bow marked on the first of three gives down, up, down.
 */
export function knownDirections(strokes: readonly Stroke[], retakeRest: number, atMost: number): (KnownDirection | null)[] {
  let known: KnownDirection | null = null;
  return strokes.map((stroke, index) => {
    if (beginsAnew(strokes, index, retakeRest)) known = null;
    if (stroke.tremolo) return null;
    if (stroke.direction !== null) known = { direction: stroke.direction, printed: stroke.printed, counted: 0 };
    else if (known) known = known.counted < atMost ? { ...known, direction: turned(known.direction), counted: known.counted + 1 } : null;
    return known;
  });
}
