import type { Instrument } from '../instruments/instrument.ts';
import { hertzOf } from '../music/pitch.ts';
import type { Seconds } from '../music/seconds.ts';
import { slideTo } from './slideTo.ts';
import type { Attack, DrawnBow, Sound } from './sound.ts';
import type { Tone } from './tones.ts';

/** A bow begins with a note when it begins as near as this. */
const SAME: Seconds = 2e-3;
/** Silence from which the bow is set anew. */
const REST: Seconds = 0.02;

function attackOf(tone: Tone, before: Tone | undefined, begins: boolean, bowed: boolean): Attack {
  if (tone.plucked) return 'pluck';
  if (!before || tone.from - before.to > REST) return 'bow';
  if (bowed ? begins : !tone.slurred) return 'change';
  return 'finger';
}

/**
 * What one player lets sound: each tone cut where the bow turns inside it, and the slides of the hand at the ends of the tones they leave.
 * `bows` in order of time, in the same seconds as the tones; a tone under none changes bow where it is not slurred.
 * Invariant: within a strand sounds follow each other and never overlap. Example: a whole note with a change in its middle gives two sounds.
 */
export function playerSounds(instrument: Instrument, tones: readonly Tone[], bows: readonly DrawnBow[]): Sound[] {
  const sounds: Sound[] = [];
  tones.forEach((tone) => {
    const { note, from, to, strand } = tone;
    const over = bows.filter(({ begins, ends }) => begins < to - SAME && ends > from + SAME);
    const before = tones.findLast((other) => other.strand === 0 && other.from < from);
    const next = strand === 0 ? tones.find((other) => other.strand === 0 && other.from > from) : undefined;
    const slide = next && !next.plucked ? slideTo(instrument, tone, next) : null;
    const stands = slide ? to - slide.seconds : to;
    const first = over[0];
    const cuts = over.filter(({ begins }) => begins > from + SAME && begins < stands - SAME);
    const starts = [from, ...cuts.map(({ begins }) => begins)];
    const hertz = hertzOf(tone.midi);
    const shared = { note, strand, open: tone.fingered.finger === 0 };
    starts.forEach((start, i) => {
      const bow = i === 0 ? (first?.direction ?? null) : cuts[i - 1]!.direction;
      const attack = i === 0 ? attackOf(tone, before, first !== undefined && Math.abs(first.begins - from) <= SAME, first !== undefined) : 'change';
      sounds.push({ ...shared, from: start, to: starts[i + 1] ?? stands, hertzFrom: hertz, hertzTo: hertz, attack, bow });
    });
    if (slide) sounds.push({ ...shared, from: stands, to, hertzFrom: hertz, hertzTo: hertz * 2 ** (slide.semitones / 12), attack: 'slide', bow: over.at(-1)?.direction ?? null });
  });
  return sounds;
}

/** When this player's bow turns, in order. */
export function turnsOf(sounds: readonly Sound[]): Seconds[] {
  return [...new Set(sounds.filter(({ attack }) => attack === 'change').map(({ from }) => from))].sort((a, b) => a - b);
}
