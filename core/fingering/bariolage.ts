import type { Chain } from '../search/marginals.ts';
import { holdAcross } from './acrossStrings.ts';
import type { Layer } from './layers.ts';
import type { LineNote } from './line.ts';

/** Quarters; slower notes are no bariolage: chosen on the training data, as are the numbers below. */
const QUICK = 0.5;
const LEAST_RETURNS = 6;
const PERIODS = [2, 4];
/** Of the other notes at least this share lies on each side of the pedal, else the open string and its fingers do as well. */
const EACH_SIDE = 0.12;

/** Natural log of a likelihood ratio: the pedal stopped. Chosen, not measured. */
const STOPPED_PEDAL = 4;

/** What a note is in a bariolage. */
export type Turn = 'pedal' | 'line';

/** Whether between two returns of a pedal another note is mostly heard: on every second note alone it is an arpeggio or a broken scale as well. */
function turnsBack(line: readonly LineNote[], start: number, end: number, period: number): boolean {
  if (period === 2) return false;
  const between = Array.from({ length: (end - start) / period }, (_, k) => line[start + k * period + period / 2]!.midi);
  return between.filter((midi) => midi !== line[start]!.midi).length * 2 >= between.length;
}

/**
 * Notes of bariolage by index: the pitch of an open string returns every fourth quick note, or every second and is taken twice in a row (stopped and
 * open), six times or more, with the line on both sides of it. Common practice: the pedal sounds on its open string, the line on others, and the hand stays. Linear. `open`: pitches of the open strings.
 * Example: on the violin G#5 E5 G#5 D#5 turned six times is bariolage on the open E.
 */
export function bariolageOf(line: readonly LineNote[], open: readonly number[]): Map<number, Turn> {
  const turns = new Map<number, Turn>();
  const quick = (i: number): boolean => line[i] !== undefined && line[i]!.duration <= QUICK;
  for (const period of PERIODS) {
    for (let start = 0; start < line.length; start += 1) {
      const pedal = line[start]!.midi;
      const goesOn = (i: number): boolean => quick(i) && line[i]!.midi === pedal;
      if (!open.includes(pedal) || !quick(start) || goesOn(start - period)) continue;
      let end = start;
      while (goesOn(end + period)) end += period;
      if ((end - start) / period + 1 < LEAST_RETURNS || !line.slice(start, end + 1).every((note) => note.duration <= QUICK)) continue;
      const around = line.slice(Math.max(0, start - period + 1), end + period);
      if (!turnsBack(line, start, end, period) && !around.some(({ midi }, i) => midi === pedal && around[i + 1]?.midi === pedal)) continue;
      const others = line.slice(start, end + 1).filter(({ midi }) => midi !== pedal);
      const below = others.filter(({ midi }) => midi < pedal).length;
      if (below < EACH_SIDE * others.length || others.length - below < EACH_SIDE * others.length) continue;
      for (let i = start - period + 1; i < end + period; i += 1) if (quick(i)) turns.set(i, line[i]!.midi === pedal ? 'pedal' : 'line');
    }
  }
  return turns;
}

/** Adds to the log potentials of a fitted chain what bariolage asks, which one note of memory cannot learn. Chords are left as they are. */
export function settleBariolage(chain: Chain, layers: readonly Layer[], line: readonly LineNote[], open: readonly number[]): void {
  const turns = bariolageOf(line, open);
  if (turns.size === 0) return;
  layers.forEach((layer, i) => {
    const turn = layer.notes.length === 1 ? turns.get(layer.notes[0]!) : undefined;
    if (turn === undefined) return;
    if (turn === 'pedal') layer.states.forEach(([place], s) => (chain.states[i]![s]! -= place!.finger === 0 ? 0 : STOPPED_PEDAL));
    const before = layers[i - 1];
    if (before?.notes.length !== 1 || !turns.has(before.notes[0]!)) return;
    const same = line[before.notes[0]!]!.midi === line[layer.notes[0]!]!.midi && turn === 'line';
    holdAcross(chain, layers, i, same);
  });
}
