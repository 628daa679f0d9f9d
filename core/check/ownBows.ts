import type { Stroke } from '../bowing/strokes.ts';
import { type Line, linesOf } from '../matching/line.ts';
import { type BowAtEvent, bowsOnLine } from './bowsOnLine.ts';
import type { SectionContext } from './context.ts';
import type { CheckSettings } from './settings.ts';

/** The bows of a part at each event of its lines, as marked for all of its section and as printed. */
export type Bows = Record<'marked' | 'printed', readonly BowAtEvent[][]>;

const known = new WeakMap<readonly Stroke[], { settings: CheckSettings; bows: BowAtEvent[] }>();

/** A voice whose bows have not changed is not read again. */
function bowsOf(line: Line, strokes: readonly Stroke[], settings: CheckSettings): BowAtEvent[] {
  const before = known.get(strokes);
  if (before?.settings === settings) return before.bows;
  const bows = bowsOnLine(line, strokes, settings);
  known.set(strokes, { settings, bows });
  return bows;
}

/** The bows of the part that is checked. Worked out once for each voice as marked, and once as printed. */
export function ownBows({ part, settings, common, printed }: SectionContext): Bows {
  const lines = linesOf(part);
  const bows = (voices: readonly Stroke[][]) => voices.map((strokes, at) => bowsOf(lines[at]!, strokes, settings));
  return { marked: bows(common), printed: bows(printed) };
}
