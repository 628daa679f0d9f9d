import { chanceFrom } from '../bowing/stagger/chance.ts';
import type { LineNote } from '../fingering/line.ts';
import type { PlainFingering } from '../fingering/output.ts';
import type { Instrument } from '../instruments/instrument.ts';
import type { Seconds, TempoMap } from '../music/seconds.ts';
import { levelOf } from './level.ts';
import { playerSounds, turnsOf } from './playerSounds.ts';
import type { DrawnBow, SoundingLine, SoundingPlayer } from './sound.ts';
import { type Tone, tonesOf } from './tones.ts';

export interface SoundingRequest {
  instrument: Instrument;
  line: readonly LineNote[];
  fingering: PlainFingering;
  /** Of the part the line comes from. */
  tempo: TempoMap;
  /** Share of the tempo, above 0; 1 is as written. Slides and changes of bow keep their own length. */
  pace: number;
  /** Who plays, each with bows in seconds of the part; one or more. */
  players: readonly { seat: string; bows: readonly DrawnBow[] }[];
  /** Notes played pizzicato. */
  plucked?: ReadonlySet<string>;
  /** Beats to be clicked, in seconds of the part, the first of a measure marked. */
  beats?: readonly { second: Seconds; first: boolean }[];
}

/** Silence before the first note and after the last. */
const BEFORE: Seconds = 0.1;
const AFTER: Seconds = 0.25;
/** Spread of a section, standard deviations: one player's pitch in cents (choirs and sections about 10 to 20 cents, from memory, taken low), onsets in seconds. */
const CENTS = 7;
const ONSETS: Seconds = 0.02;
/** Nobody strays further than so many deviations, nor than this share of the shortest note. */
const FARTHEST = 2;
const SHARE = 0.12;

/** About normal, within FARTHEST. */
function normal(chance: () => number): number {
  const sum = Array.from({ length: 6 }, chance).reduce((a, b) => a + b, 0) - 3;
  return Math.max(-FARTHEST, Math.min(FARTHEST, sum / Math.SQRT1_2));
}

/** Everybody's own clock: what is meant for one moment comes a little before or after it, the same for all that begins or ends there. */
function clockOf(chance: () => number, deviation: Seconds): (at: Seconds) => Seconds {
  const offsets = new Map<number, Seconds>();
  return (at) => {
    const key = Math.round(at * 1000);
    if (!offsets.has(key)) offsets.set(key, deviation === 0 ? 0 : deviation * normal(chance));
    return Math.max(0, at + offsets.get(key)!);
  };
}

/**
 * What is heard of a fingered passage when it is bowed so: one player alone, or a section, each a little apart from the others in pitch and time.
 * Deterministic: the same request, the same line. Throws nothing; a line without a playable note is silence of 0.35 s.
 * Invariant: without bows inside the passage the sounds of each player are the same but for pitch and the spread.
 * Example: two slurred notes on one finger, one player, give three sounds: the note, its slide, the next note.
 */
export function soundingLine({ instrument, line, fingering, tempo, pace, players, plucked = new Set(), beats = [] }: SoundingRequest): SoundingLine {
  const origin = tempo.at(line[0]?.at ?? 0);
  const secondIn = (second: Seconds): Seconds => (second - origin) / pace + BEFORE;
  const tones = tonesOf(line, fingering, (place) => secondIn(tempo.at(place)), plucked);
  const end = tones.reduce((last, { to }) => Math.max(last, to), BEFORE);
  const seconds = end + AFTER;
  const shortest = tones.reduce((least, { from, to }) => Math.min(least, to - from), Infinity);
  const deviation = players.length === 1 || tones.length === 0 ? 0 : Math.min(ONSETS, (SHARE * shortest) / FARTHEST);
  const sounding = players.map(({ seat, bows }, index): SoundingPlayer => {
    const chance = chanceFrom(index + 1);
    const cents = players.length === 1 ? 0 : CENTS * normal(chance);
    const clock = clockOf(chance, deviation);
    const own = tones.map((tone): Tone => ({ ...tone, from: clock(tone.from), to: clock(tone.to) }));
    const sounds = playerSounds(instrument, own, bows.map((bow) => ({ ...bow, begins: clock(secondIn(bow.begins)), ends: clock(secondIn(bow.ends)) })));
    return { seat, cents, sounds, level: levelOf(own, turnsOf(sounds), seconds) };
  });
  const clicks = beats.map(({ second, first }) => ({ at: secondIn(second), first })).filter(({ at }) => at >= BEFORE - 1e-6 && at < end - 1e-6);
  return { seconds, players: sounding, notes: tones.filter(({ strand }) => strand === 0).map(({ note, from }) => ({ note, from })), clicks };
}
