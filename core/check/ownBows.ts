import type { Stroke } from '../bowing/strokes.ts';
import { linesOf } from '../matching/line.ts';
import { type BowAtEvent, bowsOnLine } from './bowsOnLine.ts';
import type { SectionContext } from './context.ts';

/** The bows of a part at each event of its lines, as marked for all of its section and as printed. */
export type Bows = Record<'marked' | 'printed', readonly BowAtEvent[][]>;

const known = new WeakMap<SectionContext, Bows>();

/** The bows of the part that is checked. Worked out once for a part as marked. */
export function ownBows(part: SectionContext): Bows {
  const before = known.get(part);
  if (before) return before;
  const lines = linesOf(part.part);
  const bows = (strokes: readonly Stroke[][]) => strokes.map((ofVoice, at) => bowsOnLine(lines[at]!, ofVoice, part.settings));
  const now = { marked: bows(part.common), printed: bows(part.printed) };
  known.set(part, now);
  return now;
}
