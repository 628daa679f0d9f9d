import type { Mark } from '../music/mark.ts';
import type { Note, Part, TechnicalMark } from '../music/part.ts';
import { staffStep } from '../music/pitch.ts';
import { slurredNotes } from '../music/slurredNotes.ts';
import { quarters } from '../music/time.ts';
import type { LineNote } from './line.ts';
import type { Pin } from './pin.ts';

export interface PartLine {
  line: LineNote[];
  /** Quarters a minute at the first note that gives one, null where the part gives none. */
  tempo: number | null;
}

const isPlayed = (note: Note): boolean => !note.rest && !note.hidden && !note.cue && note.midi !== undefined;

/** What the page says of a note that its fingering depends on. */
function signs({ technical, ornaments, dynamic }: Note): Pick<LineNote, 'trill' | 'harmonic' | 'dynamic' | 'bow'> {
  const named = (name: string): TechnicalMark | undefined => technical.find((mark) => mark.name === name && !mark.hidden);
  const harmonic = named('harmonic');
  return {
    ...(ornaments.includes('trill-mark') ? { trill: true } : {}),
    ...(harmonic ? { harmonic: harmonic.detail?.artificial === undefined ? 'natural' : 'artificial' } : {}),
    ...(dynamic === null ? {} : { dynamic }),
    ...(named('up-bow') ? { bow: 'up' } : named('down-bow') ? { bow: 'down' } : {}),
  };
}

/**
 * The line of a part from measure `first` to `last` (ordinals, both included). Tied notes are one; grace notes stand before their note with no length.
 * Pitches are those that sound. Example: measures 1 to 2 of a part of two whole notes give two notes, the second at 4 quarters.
 */
export function lineOfPart(part: Part, first: number, last: number): PartLine {
  const slurred = slurredNotes(part);
  const line: LineNote[] = [];
  let tempo: number | null = null;
  for (const measure of part.measures.slice(first - 1, last)) {
    const notes = measure.notes.filter(isPlayed).sort((a, b) => quarters(a.onset) - quarters(b.onset));
    for (const note of notes) {
      tempo ??= note.tempo;
      const midi = note.sounding ?? note.midi!;
      const [onset, duration] = [quarters(note.onset), quarters(note.duration)];
      const at = quarters(measure.start) + onset;
      const held = note.ties.includes('stop') ? line.findLast((other) => other.midi === midi) : undefined;
      if (held && Math.abs(held.at + held.duration - at) < 1e-9) {
        held.duration += duration;
        continue;
      }
      const before = line.at(-1);
      const chord = before !== undefined && before.at === at && before.duration > 0 && duration > 0;
      const step = staffStep(note.pitch!) + Math.round(((midi - note.midi!) * 7) / 12);
      line.push({ id: note.id, midi, step, measure: measure.ordinal, onset, duration, at, chord, slurred: slurred.has(note.id), ...signs(note) });
    }
  }
  return { line, tempo };
}

/** Fingers and strings among marks, as pins; marks for some seats only are left to those seats. */
export function pinsOf(marks: readonly Mark[]): Map<string, Pin> {
  const pins = new Map<string, Pin>();
  for (const { note, value, seats } of marks) {
    if ((seats !== undefined && seats !== 'all') || (value.kind !== 'finger' && value.kind !== 'string')) continue;
    pins.set(note, { ...pins.get(note), ...(value.kind === 'finger' ? { finger: value.finger } : { string: value.string }) });
  }
  return pins;
}
