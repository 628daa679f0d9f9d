import type { Note, Part } from '../../music/part.ts';
import { quarters } from '../../music/time.ts';

/** Notes of one pitch tied together, or one note. */
export interface HeldNote {
  head: Note;
  /** Tied into it, with millionths of a quarter since its beginning. */
  tied: { note: Note; after: number }[];
  /** What it is: pitch as spelled, how long it is held, whether it is a grace note and which, strokes of a tremolo. */
  says: string;
}

/** What begins at one time, whatever its voice; or a silence of the whole part, then without notes. */
export interface Moment {
  /** Ordinal of the measure it begins in. */
  measure: number;
  /** Millionths of a quarter from the start of the part. */
  at: number;
  notes: HeldNote[];
  /** Two moments that say the same are the same music. */
  says: string;
}

interface Sounding {
  held: HeldNote;
  from: number;
  to: number;
  measure: number;
}

const ticks = (time: number): number => Math.round(time * 1e6);
const pitchOf = ({ pitch }: Note): string => (pitch ? `${pitch.step}${pitch.alter}/${pitch.octave}` : 'struck');
const tremoloOf = ({ ornaments }: Note): string => ornaments.find((ornament) => ornament.startsWith('tremolo')) ?? '';

/** The note that goes on in this one: tied, of its pitch, and ending as it begins; rather of its own voice. */
function heldInto(open: readonly Sounding[], note: Note, from: number): Sounding | undefined {
  if (!note.ties.includes('stop') || note.grace) return undefined;
  const fits = open.filter(({ held, to }) => {
    const last = held.tied.at(-1)?.note ?? held.head;
    return ticks(to) === ticks(from) && last.ties.includes('start') && pitchOf(last) === pitchOf(note);
  });
  return fits.find(({ held }) => held.head.voice === note.voice) ?? fits[0];
}

function soundings(part: Part): Sounding[] {
  const all: Sounding[] = [];
  const open = new Map<string, Sounding[]>();
  for (const measure of part.measures) {
    const start = quarters(measure.start);
    const notes = measure.notes.filter(({ rest }) => !rest).map((note) => ({ note, from: start + quarters(note.onset) }));
    for (const { note, from } of notes.toSorted((a, b) => a.from - b.from)) {
      const to = from + quarters(note.duration);
      const alike = open.get(pitchOf(note)) ?? [];
      const before = heldInto(alike, note, from);
      if (before) {
        before.held.tied.push({ note, after: ticks(from - before.from) });
        before.to = to;
        continue;
      }
      const one: Sounding = { held: { head: note, tied: [], says: '' }, from, to, measure: measure.ordinal };
      all.push(one);
      open.set(pitchOf(note), [...alike.filter((other) => ticks(other.to) >= ticks(from)), one]);
    }
  }
  return all;
}

/** Names each note of one moment; grace notes are counted in their voice. */
function name(together: readonly Sounding[]): void {
  const graces = new Map<string, number>();
  for (const { held, from, to } of together) {
    const { head } = held;
    if (head.grace && !head.chord) graces.set(head.voice, (graces.get(head.voice) ?? 0) + 1);
    const length = head.grace ? `grace ${graces.get(head.voice) ?? 1}` : ticks(to - from);
    held.says = `${pitchOf(head)} ${length} ${tremoloOf(head)}`;
  }
}

/**
 * A part as one row of moments in order of time, silences among them: what is played, and nothing of how it is written down. Measures, voices, staves,
 * printed numbers, ids and ties that only cross a barline leave no trace; pitches count as spelled. Slurs, dynamics and signs are no notes and do not count.
 * Example: a half note, and two quarters of its pitch tied together, say the same.
 */
export function musicRow(part: Part): Moment[] {
  const byTime = new Map<number, Sounding[]>();
  for (const one of soundings(part)) {
    const at = ticks(one.from);
    const together = byTime.get(at);
    if (together) together.push(one);
    else byTime.set(at, [one]);
  }
  const last = part.measures.at(-1);
  const end = last ? quarters(last.start) + quarters(last.length) : 0;
  const row: Moment[] = [];
  let heard = 0;
  let heardIn = 1;
  const silence = (from: number) => {
    const lasts = ticks(from - heard);
    if (lasts > 0) row.push({ measure: heardIn, at: ticks(heard), notes: [], says: `silence ${lasts}` });
  };
  const times = [...byTime.keys()].sort((a, b) => a - b);
  times.forEach((at, i) => {
    const together = byTime.get(at)!;
    const { from, measure } = together[0]!;
    silence(from);
    name(together);
    const next = times[i + 1];
    heard = Math.max(heard, ...together.map(({ to }) => to));
    heardIn = measure;
    const overlaps = next !== undefined && next <= ticks(heard) && !together.some(({ to }) => ticks(to) === next);
    const notes = together.map(({ held }) => held);
    row.push({ measure, at, notes, says: notes.map(({ says }) => says).sort().join(' + ') + (overlaps ? ` next ${next - at}` : '') });
  });
  silence(end);
  return row;
}
