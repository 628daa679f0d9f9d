import { chanceFrom } from '../bowing/stagger/chance.ts';
import type { InstrumentName } from '../music/part.ts';
import { addStrand } from './samples/addStrand.ts';
import { throughBody } from './samples/body.ts';
import { stringTables } from './samples/stringTable.ts';
import type { SoundingLine } from './sound.ts';

/** Players' random numbers come from seeds of their own, so that taking one away leaves the others as they were. */
const SEED = 1000;
/** The highest harmonic, as a share of the sampling rate. */
const HIGHEST = 0.45;
/** A single player at ff peaks about here: chosen, so that nothing is cut off. */
const LOUDNESS = 0.16;
/** Clicks: Hz, loudness, seconds. */
const CLICK = { first: 1760, other: 1320, loudness: 0.25, lasts: 0.03 };

function addClicks(samples: Float32Array, { clicks }: SoundingLine, rate: number): void {
  for (const { at, first } of clicks) {
    const begin = Math.round(at * rate);
    const hertz = first ? CLICK.first : CLICK.other;
    for (let i = 0; i < CLICK.lasts * rate && begin + i < samples.length; i += 1) samples[begin + i]! += CLICK.loudness * Math.exp((-6 * i) / (CLICK.lasts * rate)) * Math.sin((2 * Math.PI * hertz * i) / rate);
  }
}

/**
 * A sounding line as samples between -1 and 1, `rate` a second: bowed strings through the body of their instrument, players added and scaled by the root
 * of their number, so that a section is about as loud as one player. Deterministic. O(players x samples).
 * Example: 2 s at 44,100 give 88,200 samples.
 */
export function renderSounding(line: SoundingLine, instrument: InstrumentName, rate: number): Float32Array<ArrayBuffer> {
  const samples = new Float32Array(Math.ceil(line.seconds * rate));
  const tables = stringTables(HIGHEST * rate);
  line.players.forEach(({ sounds, level, cents }, index) => {
    const chance = chanceFrom(SEED + index);
    const strands = new Set(sounds.map(({ strand }) => strand));
    for (const strand of strands) addStrand(samples, sounds.filter((sound) => sound.strand === strand), { rate, cents, level, tables, chance });
  });
  throughBody(samples, instrument, rate);
  const scale = LOUDNESS / Math.sqrt(Math.max(1, line.players.length));
  for (let i = 0; i < samples.length; i += 1) samples[i]! *= scale;
  addClicks(samples, line, rate);
  for (let i = 0; i < samples.length; i += 1) samples[i] = Math.max(-1, Math.min(1, samples[i]!));
  return samples;
}
