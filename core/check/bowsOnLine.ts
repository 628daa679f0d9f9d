import type { Stroke } from '../bowing/strokes.ts';
import type { Line } from '../matching/line.ts';
import { type KnownDirection, knownDirections } from './knownDirections.ts';
import type { CheckSettings } from './settings.ts';

/** What the bow does as an event of a line begins. */
export interface BowAtEvent {
  /** A bow begins on it, or on the grace notes before it. */
  begins: boolean;
  /** Which way that bow goes; null where none begins or nothing tells. */
  known: KnownDirection | null;
  /** It is bowed, and with bows that can be counted. */
  bowed: boolean;
}

/** The bows of one voice, event by event of its line. Example: a slurred pair gives one that begins and one that does not. */
export function bowsOnLine(line: Line, strokes: readonly Stroke[], { retakeRest, strokesCounted }: Pick<CheckSettings, 'retakeRest' | 'strokesCounted'>): BowAtEvent[] {
  const directions = knownDirections(strokes, retakeRest, strokesCounted);
  let next = 0;
  let reached = -1;
  return line.map(({ first, last }): BowAtEvent => {
    let begins = -1;
    for (; next < strokes.length && strokes[next]!.begins.event <= last; next += 1) {
      const { event, inside } = strokes[next]!.begins;
      if (begins < 0 && event <= first && !inside) begins = next;
      reached = next;
    }
    const current = strokes[begins < 0 ? reached : begins];
    const bowed = current !== undefined && !current.tremolo && current.lastEvent >= first;
    return { begins: begins >= 0, known: begins >= 0 ? directions[begins]! : null, bowed };
  });
}
