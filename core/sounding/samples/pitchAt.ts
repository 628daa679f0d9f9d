import type { Seconds } from '../../music/seconds.ts';
import type { Sound } from '../sound.ts';

/** Vibrato: cents to each side (solo violin about 15) and turns a second (5.9), from memory of recordings measured; when it begins and ends, chosen. */
const CENTS = 15;
const TURNS = 5.9;
const SHORTEST: Seconds = 0.35;
const STARTS: Seconds = 0.1;
const GROWS: Seconds = 0.2;
const DIES: Seconds = 0.08;

/** Share of a way covered after a share of its time: a move with the least jerk, as its time is worked out. */
const covered = (share: number): number => share ** 3 * (10 - 15 * share + 6 * share * share);

function vibrato(at: Seconds, { from, to, open, attack }: Sound, phase: number): number {
  if (open || attack === 'slide' || to - from < SHORTEST) return 0;
  const strength = Math.max(0, Math.min(1, (at - from - STARTS) / GROWS, (to - at) / DIES));
  return CENTS * strength * Math.sin(2 * Math.PI * (TURNS * at + phase));
}

/** Frequency of a sound at a moment within it, with vibrato on long stopped notes. `cents` out of tune, `phase` of the vibrato 0 to 1. Example: half way through a slide it is half way, in semitones. */
export function pitchAt(at: Seconds, sound: Sound, cents: number, phase: number): number {
  const { from, to, hertzFrom, hertzTo } = sound;
  const slid = hertzFrom === hertzTo ? 1 : (hertzTo / hertzFrom) ** covered(Math.max(0, Math.min(1, (at - from) / (to - from))));
  return hertzFrom * slid * 2 ** ((cents + vibrato(at, sound, phase)) / 1200);
}
