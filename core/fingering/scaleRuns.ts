import type { Chain } from '../search/marginals.ts';
import type { Layer } from './layers.ts';
import type { LineNote } from './line.ts';

/** A hand on the cello holds three notes of a scale on one string. */
const GROUP = 3;
/** Fewer notes lie as well across the open strings: chosen, not measured. */
const LEAST = 12;
/** Natural log of a likelihood ratio: chosen, not measured. */
const BY_GROUPS = Number(process.env.LAM ?? 1);

/** Whether the two steps around a note belong to one scale: a tone or a semitone each, the same way, not two semitones in a row. */
function goesOn(line: readonly LineNote[], i: number): boolean {
  const [before, after] = [line[i]!.midi - line[i - 1]!.midi, line[i + 1]!.midi - line[i]!.midi];
  const isStep = (semitones: number): boolean => Math.abs(semitones) === 1 || Math.abs(semitones) === 2;
  return isStep(before) && isStep(after) && before * after > 0 && Math.abs(before + after) > 2 && !line[i]!.chord && !line[i + 1]!.chord;
}

/**
 * Long scales of a line in one direction, as the indices of their first and last notes. Linear.
 * Example: two octaves of C major and the leap after them are one run of 15 notes.
 */
export function scaleRuns(line: readonly LineNote[]): { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (let from = 0; from + LEAST <= line.length; ) {
    let to = from + 1;
    while (to + 1 < line.length && goesOn(line, to)) to += 1;
    if (to - from + 1 >= LEAST) runs.push({ from, to });
    from = to;
  }
  return runs;
}

/**
 * Adds to the log potentials of a fitted chain that a long scale goes by threes from its first note: one hand on one string, then the next
 * (Davidoff, Violoncell-Schule, 1888: 1-2-4 four times and 1-3-4). Chords are left as they are.
 */
export function settleScales(chain: Chain, layers: readonly Layer[], line: readonly LineNote[]): void {
  const L2 = Number(process.env.L2 ?? 1);
  const L3 = Number(process.env.L3 ?? 1);
  const NEAR = Number(process.env.NEAR ?? 1);
  for (const { from, to } of scaleRuns(line)) {
    const up = line[to]!.midi > line[from]!.midi;
    for (let i = 0; i < layers.length; i += 1) {
      const note = layers[i]!.notes[0]!;
      if (note < from || note > to) continue;
      const fromTop = up ? to - note : note - from;
      const isLowest = fromTop % GROUP === GROUP - 1;
      const here = layers[i]!.states;
      if (note === from) continue;
      const begins = up ? isLowest : fromTop % GROUP === 0;
      layers[i - 1]!.states.forEach(([a], x) => here.forEach(([b], y) => {
        const [lo, hi] = up ? [a!, b!] : [b!, a!]; const on = up ? line[note + 1] : line[note - 2];
        if (lo.string === hi.string && lo.finger === 1 && hi.position === lo.position && hi.above - lo.above === 2 && hi.above <= 9 && on && (up ? note < to : note - 1 > from)) chain.steps[i]![x * here.length + y]! -= (hi.finger === 2) === (Math.abs(on.midi - line[up ? note : note - 1]!.midi) === 2) ? 0 : L3;
        if (lo.finger === 0 && lo.string === hi.string && hi.above === 2 && hi.finger > 1) chain.steps[i]![x * here.length + y]! -= L2;
        if (a!.finger === 0 || b!.finger === 0) return;
        const stays = a!.string === b!.string && Math.abs(a!.position - b!.position) <= NEAR;
        if (stays === begins) chain.steps[i]![x * here.length + y]! -= BY_GROUPS;
      }));
    }
  }
}
