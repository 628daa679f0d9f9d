import type { Note, Part } from '../music/part.ts';
import { type Seconds, type TempoMap } from '../music/seconds.ts';
import { quarters } from '../music/time.ts';

/** Notes of one voice that begin together: what one bow takes at once. */
export interface BowEvent {
  /** The first of them in the document; it carries the marks. */
  head: Note;
  /** All of them, the head first. */
  notes: Note[];
  /** Ordinal of its measure. */
  measure: number;
  /** Quarters from the start of the part. */
  from: number;
  to: number;
  start: Seconds;
  end: Seconds;
  /** Under the same bow as the event before it, by a printed slur or tie. */
  bound: boolean;
}

/** One voice of the part, in order of time. */
export type Voice = BowEvent[];

const played = (note: Note): boolean => !note.rest && !note.hidden && !note.cue;

function voicesOf(part: Part, tempo: TempoMap): Voice[] {
  const voices = new Map<string, Voice>();
  for (const measure of part.measures) {
    const start = quarters(measure.start);
    for (const note of measure.notes) {
      if (!played(note)) continue;
      const key = `${note.staff ?? 1}/${note.voice}`;
      const voice = voices.get(key) ?? voices.set(key, []).get(key)!;
      const last = voice.at(-1);
      if (note.chord && last?.measure === measure.ordinal) {
        last.notes.push(note);
        continue;
      }
      const from = start + quarters(note.onset);
      const to = from + quarters(note.duration);
      voice.push({ head: note, notes: [note], measure: measure.ordinal, from, to, start: tempo.at(from), end: tempo.at(to), bound: false });
    }
  }
  return [...voices.values()];
}

interface Span {
  from: number;
  to: number;
}

/** Slurs of one voice, without those that only phrase: a slur over other slurs of more than one sounding note each is not one bow. */
function bowSlurs(part: Part, voice: Voice): Span[] {
  const place = new Map(voice.flatMap((event, index) => event.notes.map((note) => [note.id, index] as const)));
  const spans: Span[] = part.slurs.flatMap(({ from, to }) => {
    const span = { from: place.get(from), to: place.get(to) };
    return span.from !== undefined && span.to !== undefined && span.from < span.to ? [span as Span] : [];
  });
  const ofGraces = (span: Span) => voice.slice(span.from, span.to).every((event) => event.head.grace);
  const encloses = (outer: Span, inner: Span) => outer.from <= inner.from && outer.to >= inner.to && outer.to - outer.from > inner.to - inner.from;
  spans.sort((a, b) => a.from - b.from || b.to - a.to);
  return spans.filter((outer, index) => {
    for (let next = index + 1; next < spans.length && spans[next]!.from < outer.to; next++) {
      if (encloses(outer, spans[next]!) && !ofGraces(spans[next]!)) return false;
    }
    return true;
  });
}

const isTied = (before: BowEvent, event: BowEvent): boolean =>
  Math.abs(before.to - event.from) < 1e-6 && before.notes.some((note) => note.ties.includes('start')) && event.notes.some((note) => note.ties.includes('stop'));

/** True for the first sounding note of a bow as printed: nothing but grace notes of its own goes before it. Example: the second note of a slur is not. */
export function opensBow(voice: Voice, at: number): boolean {
  let first = at;
  while (voice[first]!.bound && voice[first - 1]?.head.grace) first -= 1;
  return !voice[first]!.bound;
}

/**
 * The part as a bow meets it: voice by voice, chords as one event, with printed slurs and ties as bindings. Rests, cues and hidden notes are left out;
 * a rest shows as a gap in time. A slur that only phrases other slurs binds nothing. Grace notes last no time and go with the note after them.
 * Example: two slurred quarters give two events, the second bound.
 */
export function bowEvents(part: Part, tempo: TempoMap): Voice[] {
  const voices = voicesOf(part, tempo);
  for (const voice of voices) {
    for (const { from, to } of bowSlurs(part, voice)) for (let i = from + 1; i <= to; i++) voice[i]!.bound = true;
    let leansForward = false;
    for (let i = 0; i < voice.length; i++) {
      const [before, event] = [voice[i - 1], voice[i]!];
      if (before && (leansForward || isTied(before, event))) event.bound = true;
      // Grace notes slurred to the note before them end its bow; others open the bow of the note that follows.
      leansForward = event.head.grace === true && (leansForward || !event.bound);
    }
  }
  return voices;
}
