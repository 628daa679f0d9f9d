import type { Seconds } from '../../../music/seconds.ts';
import { bowDynamic, type Dynamic, DYNAMICS } from '../../bowLength.ts';
import type { Swell } from '../../direction/swells.ts';
import type { Voice } from '../../events.ts';
import type { ChangePlace } from './places.ts';
import type { Stretch } from './stretch.ts';

/** Seconds before and after the peak over which its weight falls to nothing; chosen, not measured. */
const AROUND: Seconds = 1;
/** Steps between dynamics that make a peak: less is an even passage; chosen, not measured. */
const LEAST = 0.5;
const ATTACKS = ['accent', 'strong-accent'];

/** Loudness in steps of the dynamics: what is printed, and one step over the length of each hairpin since then. */
function loudnessAt(position: number, printedAt: number, dynamic: Dynamic, swells: readonly Swell[]): number {
  const grown = swells.reduce((sum, { from, to, sign }) => (from < printedAt || from >= position || to <= from ? sum : sum + (sign * (Math.min(position, to) - from)) / (to - from)), 0);
  return DYNAMICS.indexOf(dynamic) + grown;
}

/**
 * How much each place is the peak of its stretch: 1 where the passage is loudest (by its dynamics and hairpins) and on an accented note, falling to 0
 * over a second on both sides. All 0 where it is equally loud throughout.
 * @param swells hairpins of the part, in quarters from its start
 * Example: at the turn from crescendo to diminuendo 1, half a second after it 0.5.
 */
export function peakWeights(voice: Voice, { from }: Stretch, places: readonly ChangePlace[], swells: readonly Swell[], assumed: Dynamic): number[] {
  let printedAt = voice[from]!.from;
  let before: string | null = null;
  const loudness = places.map((place) => {
    const event = voice[place.event]!;
    const printed = event.head.dynamic;
    if (printed !== before) printedAt = event.from;
    before = printed;
    const position = event.from + ((place.second - event.start) / (event.end - event.start)) * (event.to - event.from);
    return loudnessAt(position, printedAt, bowDynamic(printed, assumed), swells);
  });
  const loudest = Math.max(...loudness);
  const hasPeak = loudest - Math.min(...loudness) >= LEAST;
  const peaks = places.flatMap(({ second }, i) => (hasPeak && loudest - loudness[i]! < 1e-9 ? [second] : []));
  return places.map(({ event, after, second }) => {
    const accented = after === 0 && voice[event]!.notes.some(({ articulations }) => articulations.some((sign) => ATTACKS.includes(sign)));
    const away = peaks.reduce((least, peak) => Math.min(least, Math.abs(second - peak)), Infinity);
    return accented ? 1 : Math.max(0, 1 - away / AROUND);
  });
}
