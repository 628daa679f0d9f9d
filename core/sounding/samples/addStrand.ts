import type { Seconds } from '../../music/seconds.ts';
import type { LevelCorner, Sound } from '../sound.ts';
import { pitchAt } from './pitchAt.ts';
import { PERIOD } from './stringTable.ts';

/** Pitch and loudness are worked out anew after so many samples. */
const BLOCK = 32;
/** How fast a string speaks under a bow set on it, and how it dies when the bow leaves: chosen, not measured (perfect attacks take a few periods). */
const SPEAKS: Seconds = 0.03;
const DIES: Seconds = 0.06;
/** Hair on the string, against the string's own sound; more while a bow begins. Chosen, not measured. */
const HAIR = 0.012;
const BEGINS = 0.06;
const BEGINS_FOR: Seconds = 0.015;
/** A plucked string falls to a third in this time: chosen, not measured. */
const PLUCKED: Seconds = 0.22;
const TOUCHING: Seconds = 1e-3;

export interface StrandSetting {
  rate: number;
  cents: number;
  level: readonly LevelCorner[];
  tables: (hertz: number) => Float32Array;
  chance: () => number;
}

/** Walks a curve of loudness forward; as an amplitude. */
function levelReader(level: readonly LevelCorner[]): (at: Seconds) => number {
  let i = 0;
  return (at) => {
    while (i > 0 && level[i]!.at > at) i -= 1;
    while (i + 1 < level.length && level[i + 1]!.at <= at) i += 1;
    const [here, next] = [level[i], level[i + 1]];
    if (!here) return 1;
    const share = next && next.at > here.at ? Math.max(0, (at - here.at) / (next.at - here.at)) : 0;
    return 10 ** ((here.decibels + (next ? share * (next.decibels - here.decibels) : 0)) / 20);
  };
}

/** The edges of a sound where nothing touches it, and the hair's noise where a bow begins. */
function edgesAt(at: Seconds, { from, to, attack }: Sound, touches: boolean): { open: number; noise: number } {
  const speaks = attack === 'bow' ? Math.min(1, Math.max(0, at - from) / SPEAKS) : 1;
  const dies = touches || at < to ? 1 : Math.max(0, 1 - (at - to) / DIES) ** 2;
  const begins = attack === 'bow' || attack === 'change' ? BEGINS * Math.exp(-Math.max(0, at - from) / BEGINS_FOR) : 0;
  if (attack === 'pluck') return { open: dies * Math.exp(-Math.max(0, at - from) / PLUCKED), noise: 0 };
  return { open: speaks * dies, noise: HAIR + begins };
}

/** Adds the sounds of one strand of one player, in order of time, to the samples. The wave runs on from sound to sound where they touch. */
export function addStrand(samples: Float32Array, sounds: readonly Sound[], { rate, cents, level, tables, chance }: StrandSetting): void {
  const gainAt = levelReader(level);
  const vibrato = chance();
  let phase = chance() * PERIOD;
  let gain = 0;
  sounds.forEach((sound, n) => {
    const next = sounds[n + 1];
    const touches = next !== undefined && next.from - sound.to < TOUCHING;
    const last = Math.min(samples.length, Math.round((touches ? next.from : sound.to + Math.min(DIES, next ? next.from - sound.to : DIES)) * rate));
    const table = tables(Math.max(sound.hertzFrom, sound.hertzTo));
    for (let begin = Math.round(sound.from * rate); begin < last; begin += BLOCK) {
      const [at, end] = [begin / rate, Math.min(last, begin + BLOCK)];
      const { open, noise } = edgesAt(end / rate, sound, touches);
      const aim = gainAt(end / rate) * open;
      const step = (pitchAt(at, sound, cents, vibrato) * PERIOD) / rate;
      const change = (aim - gain) / (end - begin);
      for (let i = begin; i < end; i += 1) {
        gain += change;
        const place = Math.floor(phase);
        const wave = table[place]! + (phase - place) * (table[place + 1]! - table[place]!);
        samples[i]! += gain * (wave + noise * (2 * chance() - 1));
        phase += step;
        if (phase >= PERIOD) phase -= PERIOD;
      }
    }
    if (!touches) gain = 0;
  });
}
