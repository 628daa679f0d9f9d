import { type Stretch, stretchesOf } from '../music/stretches.ts';
import { layerOf, type Layer } from './layers.ts';
import type { LineNote } from './line.ts';
import type { Place } from './frame.ts';

/** Natural logs of likelihood ratios, chosen on the training data: the pinned position and string for what is near, fading by e in so many notes; the pinned place for the same figure elsewhere. */
const NEAR_POSITION = 0.4;
const NEAR_STRING = 0.8;
const FADES_IN = 3;
const REACHES = 9;
const SAME_FIGURE = 6;
/** Notes on each side that must agree for a figure to count as the same. */
const AROUND = 3;

const known = new WeakMap<readonly LineNote[], Map<string, number[]>>();

const figureAt = (line: readonly LineNote[], i: number): string => {
  let key = '';
  for (let j = i - AROUND; j <= i + AROUND; j += 1) key += `${line[j]?.midi ?? ''},`;
  return key;
};

/** The layers that a pin in layer `at` says something about. */
export function layersNear(layers: readonly Layer[], at: number): number[] {
  const from = Math.max(0, at - REACHES);
  return Array.from({ length: Math.min(layers.length - 1, at + REACHES) - from + 1 }, (_, k) => from + k);
}

/** Notes by the pitches around them; found once for a line. */
function figures(line: readonly LineNote[]): Map<string, number[]> {
  let found = known.get(line);
  if (!found) {
    found = new Map();
    for (let i = 0; i < line.length; i += 1) {
      const key = figureAt(line, i);
      const notes = found.get(key);
      if (notes) notes.push(i);
      else found.set(key, [i]);
    }
    known.set(line, found);
  }
  return found;
}

/**
 * What a pin says beyond its own note, added to the log potentials `states` (layers are replaced, not written into): players keep hand and string for a
 * while, and play the same figure the same way. `kept` are the places of the pinned note that are left. Returns the layers that changed.
 * Example: finger 1 in third position on the D string makes third position on the D string likelier for the dozen notes on either side.
 */
export function leanOn(states: Float64Array[], layers: readonly Layer[], line: readonly LineNote[], at: number, note: number, kept: readonly Place[]): Stretch[] {
  const [first] = kept;
  const isOne = <T>(of: (place: Place) => T): boolean => kept.every((place) => of(place) === of(first!));
  const position = isOne((place) => place.position) && first!.finger !== 0 ? first!.position : null;
  const string = isOne((place) => place.string) ? first!.string : null;
  const touched = new Set<number>([at]);
  for (const i of layersNear(layers, at)) {
    touched.add(i);
    if (i === at || (position === null && string === null)) continue;
    const fades = Math.exp(-Math.abs(i - at) / FADES_IN);
    states[i] = states[i]!.map((value, s) => {
      const state = layers[i]!.states[s]!;
      return value + fades * ((state[0]!.position === position ? NEAR_POSITION : 0) + (state.some((place) => place.string === string) ? NEAR_STRING : 0));
    });
  }
  if (kept.length > 1) return stretchesOf(touched);
  const done = new Set([at]);
  for (const other of figures(line).get(figureAt(line, note))!) {
    const i = layerOf(layers, other);
    if (i === -1 || done.has(i)) continue;
    done.add(i);
    touched.add(i);
    const k = layers[i]!.notes.indexOf(other);
    states[i] = states[i]!.map((value, s) => {
      const place = layers[i]!.states[s]![k]!;
      return value + (place.string === first!.string && place.finger === first!.finger && place.position === first!.position ? SAME_FIGURE : 0);
    });
  }
  return stretchesOf(touched);
}
