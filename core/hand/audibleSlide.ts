import type { Semitones } from '../instruments/instrument.ts';
import type { Seconds } from '../music/seconds.ts';

export interface SlideSetting {
  /** Semitones the sounding finger travels; the sign does not matter. */
  semitones: Semitones;
  /** Duration of the slide, 0 or more. */
  seconds: Seconds;
  /** Part of it that the bow hides: 0 in a slur, 0.036 at a bow change (measured on recordings), all of it after a rest. */
  cover?: Seconds;
  /** Hearing threshold in semitone-seconds: 0.16 exposed, 0.32 in a running passage ('t Hart 1976). */
  threshold?: number;
  /** Players in the section, and how many slide together. */
  players?: number;
  sliding?: number;
  /** Reverberant over direct sound, and reverberation time. */
  room?: number;
  reverberation?: Seconds;
  /** Level of the rest of the orchestra beside the slide, dB; absent = silent. */
  othersDb?: number;
  hertz?: number;
}

export interface AudibleSlide {
  /** In units of the threshold: 1 is just heard. */
  amount: number;
  /** 0 to 1; one half at the threshold. */
  index: number;
}

const clamp = (value: number): number => Math.max(0, Math.min(1, value));
const decibels = (power: number): number => 10 * Math.log10(power);

/** Masked threshold in dB of a component that far from the others' partials (rounded exponential filter; the ear's bandwidth after Glasberg and Moore). */
function maskedThreshold(semitones: number, hertz: number): number {
  const bandwidth = 24.7 * ((4.37 * hertz) / 1000 + 1);
  const distance = ((4 * hertz) / bandwidth) * (2 ** (semitones / 24) - 1);
  return Math.max(-30, -5 + decibels((1 + distance) * Math.exp(-distance)));
}

/**
 * How audible a slide is: its pitch travel against the threshold of hearing a glide as a glide, and its level against the players who do not slide.
 * Model: 't Hart's law carried over from speech (an assumption), power addition of players, a masked threshold; steps under 20 ms are not glides.
 * Invariants: never falls with more semitones, time or sliders; never rises with more players, room or cover. Defaults: one player, dry, 440 Hz.
 * Example: two semitones in 0.12 s under a slur, alone: amount 1.5, index 0.79.
 */
export function audibleSlide(setting: SlideSetting): AudibleSlide {
  const { cover = 0, threshold = 0.16, players = 1, sliding = 1, room = 0, reverberation = 2, othersDb, hertz = 440 } = setting;
  const semitones = Math.abs(setting.semitones);
  const heard = Math.max(0, setting.seconds - cover);
  const alone = (clamp((heard - 0.02) / 0.03) * semitones * heard) / threshold;
  const mask = (players - sliding) / sliding + room * 10 ** ((-6 * (heard / 2)) / reverberation) + (othersDb === undefined ? 0 : 10 ** (othersDb / 10));
  const level = mask > 0 ? Math.min(40, -decibels(mask)) : 40;
  const amount = alone * clamp((level - maskedThreshold(semitones, hertz)) / 10);
  return { amount, index: 1 - 2 ** -(amount * amount) };
}
