import type { Chain } from '../search/marginals.ts';
import type { Layer } from './layers.ts';
import type { LineNote } from './line.ts';

/** Quarters: slower notes need not ring over one another. Chosen, not measured, as are the numbers below. */
const QUICK = 0.5;
/** A tritone, in semitones: less lies under a hand on one string. */
const WIDE = 6;
/** Natural logs of likelihood ratios: both notes on one string, the hand moved. */
const ONE_STRING = 5;
const MOVED = 2;

/** Whether a quick note turns back to the one before it over a wide leap: G2 Bb3 G4 Bb3, a chord that is held while the bow rocks over its strings. */
function turns(line: readonly LineNote[], before: number, note: number): boolean {
  const quick = [before, note].every((i) => line[i]!.duration <= QUICK);
  const returns = line[before - 1]?.midi === line[note]!.midi || line[note + 1]?.midi === line[before]!.midi;
  return quick && returns && Math.abs(line[note]!.midi - line[before]!.midi) >= WIDE;
}

/**
 * Adds to the log potentials of a fitted chain that the wide notes of a turned chord lie on strings of their own, though an open string would let one string
 * have both. Common practice, no source: it is held as a double stop is. Chords are left as they are. Linear in notes.
 */
export function settleTurnedChords(chain: Chain, layers: readonly Layer[], line: readonly LineNote[]): void {
  for (let i = 1; i < layers.length; i += 1) {
    const [before, layer] = [layers[i - 1]!, layers[i]!];
    if (before.notes.length !== 1 || layer.notes.length !== 1 || !turns(line, before.notes[0]!, layer.notes[0]!)) continue;
    before.states.forEach(([a], x) => layer.states.forEach(([b], y) => {
      const at = x * layer.states.length + y;
      if (a!.string === b!.string) chain.steps[i]![at]! -= ONE_STRING;
      if (a!.position !== b!.position) chain.steps[i]![at]! -= MOVED;
    }));
  }
}
