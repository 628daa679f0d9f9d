import type { PlainFingering } from '../fingering/output.ts';
import type { LineNote } from '../fingering/line.ts';
import type { Seconds } from '../music/seconds.ts';

/** A note of a line in time, with where it is stopped. */
export interface Tone {
  note: string;
  midi: number;
  /** 0, or its place in a chord. */
  strand: number;
  from: Seconds;
  to: Seconds;
  slurred: boolean;
  plucked: boolean;
  /** In force; null where the part gives none. */
  dynamic: string | null;
  fingered: PlainFingering['notes'][number];
}

/** How long a grace note takes from the note before: as the hand's steps count it; never more than half of that note. */
const GRACE: Seconds = 0.08;

/** Grace notes that stand before their note take their time from what went before, the last of them nearest. */
function playGraces(tones: Tone[], isGrace: (tone: Tone) => boolean): void {
  let end = tones.length;
  while (end > 0) {
    let first = end;
    while (first > 0 && isGrace(tones[first - 1]!)) first -= 1;
    if (first < end) {
      const before = tones[first - 1];
      const at = tones[first]!.from;
      const room = Math.min(GRACE * (end - first), before ? (at - before.from) / 2 : GRACE * (end - first));
      const begins = before ? at - room : Math.max(0, at - room);
      for (let i = first; i < end; i += 1) {
        tones[i]!.from = begins + ((at - begins) * (i - first)) / (end - first);
        tones[i]!.to = begins + ((at - begins) * (i + 1 - first)) / (end - first);
      }
      if (before && before.to > begins) before.to = begins;
    }
    end = first - 1;
  }
}

/**
 * The notes of a fingered line in seconds, in order; `secondAt` says when a place in quarters is, `plucked` which notes are pizzicato. Notes the fingering leaves out (they cannot be played)
 * are silent. A tone lasts at most to the next of its strand. Example: two quarters at 60 a minute are tones from 0 to 1 and 1 to 2.
 */
export function tonesOf(line: readonly LineNote[], fingering: PlainFingering, secondAt: (quarters: number) => Seconds, plucked: ReadonlySet<string>): Tone[] {
  const fingered = new Map(fingering.notes.map((note) => [note.id, note]));
  const graces = new Set(line.filter(({ duration }) => duration === 0).map(({ id }) => id));
  const tones: Tone[] = [];
  let strand = 0;
  for (const note of line) {
    strand = note.chord ? strand + 1 : 0;
    const found = fingered.get(note.id);
    if (!found) continue;
    tones.push({ note: note.id, midi: note.midi, strand, from: secondAt(note.at), to: secondAt(note.at + note.duration), slurred: note.slurred, plucked: plucked.has(note.id), dynamic: note.dynamic ?? null, fingered: found });
  }
  playGraces(tones, ({ note }) => graces.has(note));
  const next = new Map<number, Seconds>();
  for (const tone of [...tones].reverse()) {
    tone.to = Math.min(tone.to, next.get(tone.strand) ?? Infinity);
    next.set(tone.strand, tone.from);
  }
  return tones.filter(({ from, to }) => to > from);
}
