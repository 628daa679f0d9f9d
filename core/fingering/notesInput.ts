import { z } from 'zod';
import type { LineNote } from './line.ts';
import { Finger } from '../music/mark.ts';
import { staffStep } from '../music/pitch.ts';
import type { Pin } from './pin.ts';
import { stepsAround } from './spell.ts';

const SPELLING = /^([A-G])(##|bb|[#b]?)(-?\d)$/;

/** The plain form of a line: pitches, places in the measure, slurs, bows and what is settled already. */
export const NotesInput = z.strictObject({
  instrument: z.enum(['violin', 'viola', 'cello', 'double-bass']),
  /** Quarters a minute. */
  tempo: z.number().min(10).max(400),
  notes: z.array(
    z.strictObject({
      id: z.string().min(1).max(64),
      /** Sounding MIDI key. */
      pitch: z.int().min(12).max(120),
      /** Letter, sharps or flats, octave: "F#5", "Bb3". */
      spelling: z.string().regex(SPELLING).optional(),
      measure: z.int().min(1).max(100_000),
      onset: z.number().min(0).max(10_000),
      duration: z.number().min(0).max(10_000),
      slur: z.string().optional(),
      bow: z.enum(['up', 'down']).optional(),
      trill: z.literal(true).optional(),
      harmonic: z.enum(['natural', 'artificial']).optional(),
      dynamic: z.string().max(8).optional(),
      pin: z.strictObject({ finger: Finger.optional(), string: z.int().min(1).max(4).optional(), position: z.number().min(0).max(24).optional() }).optional(),
    }),
  ),
});
export type NotesInput = z.infer<typeof NotesInput>;

/** Staff step of a spelled note at its sounding octave: the octave of the spelling gives way to the pitch, as parts transpose. */
function spelledStep(spelling: string, midi: number): number {
  const [, letter, accidental] = SPELLING.exec(spelling)!;
  const alter = accidental === '' ? 0 : accidental!.length * (accidental!.startsWith('#') ? 1 : -1);
  const step = letter as 'A';
  const octave = Math.round((midi - alter - 60) / 12) + 4;
  const candidates = [octave - 1, octave, octave + 1].map((o) => ({ step: staffStep({ step, alter, octave: o }), midi: 12 * (o + 1) + { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 }[step as string]! + alter }));
  return candidates.reduce((best, other) => (Math.abs(other.midi - midi) < Math.abs(best.midi - midi) ? other : best)).step;
}

/** Where each measure begins, from what sounds in it: a measure is as long as the usual one unless its notes say more; the first may be short. */
function measureStarts(notes: NotesInput['notes']): Map<number, number> {
  const ends = new Map<number, number>();
  for (const note of notes) ends.set(note.measure, Math.max(ends.get(note.measure) ?? 0, note.onset + note.duration));
  const sorted = [...ends.values()].sort((a, b) => a - b);
  const usual = sorted[sorted.length >> 1] ?? 4;
  const starts = new Map<number, number>();
  const last = Math.max(...ends.keys());
  let at = 0;
  for (let measure = Math.min(...ends.keys()); measure <= last; measure += 1) {
    starts.set(measure, at);
    at += Math.max(usual, ends.get(measure) ?? 0);
  }
  return starts;
}

/**
 * A line and its pins from the plain form. Notes are taken in order of measure and onset; equal onsets are a chord. Missing spellings follow the key
 * around the note. Example: two notes with the same measure and onset make one double stop.
 */
export function lineFrom(input: NotesInput): { line: LineNote[]; pins: Map<string, Pin> } {
  const notes = [...input.notes].sort((a, b) => a.measure - b.measure || a.onset - b.onset);
  const starts = measureStarts(notes);
  const guessed = stepsAround(notes.map((note) => note.pitch));
  const pins = new Map<string, Pin>();
  const line = notes.map((note, i): LineNote => {
    const before = notes[i - 1];
    const { finger, string, position } = note.pin ?? {};
    if (note.pin) pins.set(note.id, { ...(finger === undefined ? {} : { finger }), ...(string === undefined ? {} : { string }), ...(position === undefined ? {} : { position }) });
    return {
      id: note.id,
      midi: note.pitch,
      step: note.spelling === undefined ? guessed[i]! : spelledStep(note.spelling, note.pitch),
      measure: note.measure,
      onset: note.onset,
      duration: note.duration,
      at: starts.get(note.measure)! + note.onset,
      chord: before !== undefined && before.measure === note.measure && before.onset === note.onset && before.duration > 0 && note.duration > 0,
      slurred: before !== undefined && note.slur !== undefined && note.slur === before.slur,
      ...(note.bow ? { bow: note.bow } : {}),
      ...(note.trill ? { trill: true } : {}),
      ...(note.harmonic ? { harmonic: note.harmonic } : {}),
      ...(note.dynamic ? { dynamic: note.dynamic } : {}),
    };
  });
  return { line, pins };
}
