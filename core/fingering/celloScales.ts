import type { Chain } from '../search/marginals.ts';
import type { Place } from './frame.ts';
import { layerOf, type Layer } from './layers.ts';
import type { LineNote } from './line.ts';
import { scaleRuns, type ScaleRun } from './scaleRuns.ts';

/** The hand of the cello holds three notes of a scale on one string. */
const GROUP = 3;
/** Natural logs of likelihood ratios: groups of three kept; 1 a tone above an open string; the hand open for two tones, closed for a tone and a semitone. Chosen, not measured. */
const BY_GROUPS = 1.75;
const FIRST_ABOVE_OPEN = 2;
const SHAPE = 1;
/** Above this many semitones over the open string the fourth finger is no longer used, and three notes lie otherwise. */
const NECK = 9;

/** What speaks against a step of a scale from the lower note to the higher or back, in natural logs. */
function against(line: readonly LineNote[], { from, to, up }: ScaleRun, note: number, a: Place, b: Place): number {
  const [low, high] = up ? [a, b] : [b, a];
  const isTone = high.string === low.string && high.above - low.above === 2;
  if (low.finger === 0) return isTone && high.finger > 1 ? FIRST_ABOVE_OPEN : 0;
  if (high.finger === 0) return 0;
  const fromTop = up ? to - note : note - from;
  const begins = fromTop % GROUP === (up ? GROUP - 1 : 0);
  const stays = a.string === b.string && Math.abs(a.position - b.position) <= 1;
  const groups = stays === begins ? BY_GROUPS : 0;
  const [top, above] = up ? [note, note + 1] : [note - 1, note - 2];
  if (!isTone || low.finger !== 1 || high.position !== low.position || high.above > NECK || above < from || above > to) return groups;
  const opens = Math.abs(line[above]!.midi - line[top]!.midi) === 2;
  return groups + ((high.finger === 2) === opens ? 0 : SHAPE);
}

/**
 * Adds to the log potentials of a fitted chain that a long scale on the cello goes by threes, counted from its highest note: one hand on one string, then
 * the next; 1-2-4, or 1-3-4 where a semitone follows the tone (Davidoff, Violoncell-Schule, 1888). Open strings may stand for either end of a three.
 * Linear in notes. Example: E major over two octaves is 1-2-4 four times and 1-3-4.
 */
export function settleCelloScales(chain: Chain, layers: readonly Layer[], line: readonly LineNote[]): void {
  for (const run of scaleRuns(line)) {
    for (let note = run.from + 1; note <= run.to; note += 1) {
      const i = layerOf(layers, note);
      if (i < 1 || layers[i - 1]!.notes.at(-1) !== note - 1) continue;
      const here = layers[i]!.states;
      const steps = chain.steps[i]!;
      layers[i - 1]!.states.forEach((from, x) => here.forEach(([b], y) => (steps[x * here.length + y]! -= against(line, run, note, from.at(-1)!, b!))));
    }
  }
}
