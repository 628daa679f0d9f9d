import type { Marginals } from '../search/marginals.ts';
import { layerOf, type Layer } from './layers.ts';
import type { LineNote } from './line.ts';

/** Notes on each side that must move by the same intervals for a figure to count as the same: chosen, not measured. */
const AROUND = 3;
/** Fingers, the open string and the thumb among them. */
const FINGERS = 6;

const known = new WeakMap<readonly LineNote[], Map<number, number[]>>();

/** For every note of a sequence the notes at the same place of the same figure, itself among them; found once for a line. */
function sequences(line: readonly LineNote[]): Map<number, number[]> {
  const before = known.get(line);
  if (before) return before;
  const figures = new Map<string, number[]>();
  for (let i = AROUND; i + AROUND < line.length; i += 1) {
    let key = '';
    for (let j = i - AROUND; j <= i + AROUND; j += 1) key += `${line[j]!.midi - line[i]!.midi},`;
    const notes = figures.get(key);
    if (notes) notes.push(i);
    else figures.set(key, [i]);
  }
  const found = new Map([...figures.values()].filter(({ length }) => length > 1).flatMap((notes) => notes.map((note) => [note, notes] as const)));
  known.set(line, found);
  return found;
}

/**
 * What each state of a layer costs because the same figure, on any degree, takes other fingers: the share of its likely fingerings that do, 0 to 1, by layer.
 * Only the figures that come in the layers `from` to `to`, wherever else they come; layers outside sequences, and chords, are absent. Linear in notes.
 * Example: where a figure comes three times and twice asks for 1, finger 1 costs a third there and the other fingers two thirds or more.
 */
export function sequenceCosts(layers: readonly Layer[], line: readonly LineNote[], marginals: Marginals, from = 0, to = layers.length - 1): Map<number, Float64Array> {
  const costs = new Map<number, Float64Array>();
  const all = sequences(line);
  const done = new Set<number[]>();
  for (let at = from; at <= to; at += 1) {
    const notes = all.get(layers[at]!.notes[0]!);
    if (notes === undefined || done.has(notes)) continue;
    done.add(notes);
    const same = notes.map((note) => layerOf(layers, note)).filter((i) => i >= 0 && layers[i]!.notes.length === 1);
    const share = new Float64Array(FINGERS);
    for (const i of same) layers[i]!.states.forEach(([place], s) => (share[place!.finger]! += marginals.states[i]![s]! / same.length));
    for (const i of same) costs.set(i, Float64Array.from(layers[i]!.states, ([place]) => 1 - share[place!.finger]!));
  }
  return costs;
}
