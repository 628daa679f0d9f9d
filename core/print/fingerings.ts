import { z } from 'zod';
import { type HandPlace, handMoves, handPlaces, type StoppingFinger } from '../hand/handPlace.ts';
import { canSoundOn } from '../hand/place.ts';
import type { Instrument, StringNumber } from '../instruments/instrument.ts';
import { instrumentNamed } from '../instruments/instrumentNamed.ts';
import { type Mark, type MarkValue, slotOf } from '../music/mark.ts';
import type { Note, Part } from '../music/part.ts';
import { isFor, type Seats } from '../music/seat.ts';
import { quarters } from '../music/time.ts';
import { readMarks } from '../musicxml/readMarks.ts';

/** Which figures of the left hand are printed. */
export const Fingerings = z.enum(['all', 'sparse', 'none']);
export type Fingerings = z.infer<typeof Fingerings>;

export type SeatedMark = Mark & { seats: Seats };

const LEFT_HAND = new Set(['finger', 'string', 'reach']);

/** Quarters of silence after which the hand may be anywhere, so that its next figure is printed again. Chosen, not measured. */
const FORGOTTEN = 4;

/** What is printed on a note of the left hand. */
const printedOn = (note: Note): MarkValue[] => readMarks(note.technical.filter(({ hidden }) => !hidden)).map(({ value }) => value);

interface Figure {
  note: Note;
  value: Extract<MarkValue, { kind: 'finger' }>;
  /** Absent where the source printed it. */
  mark?: SeatedMark;
  string?: StringNumber;
  /** Stands whatever the hand does. */
  always: boolean;
  /** Quarters from the start of the part. */
  at: number;
  ends: number;
}

/** An open string's pitch may be stopped on the string below, and the other way round. */
const openOrStopped = (instrument: Instrument, midi: number): boolean => instrument.openStrings.includes(midi) && ([1, 2, 3, 4] as const).some((string) => instrument.openStrings[string - 1]! < midi && canSoundOn(instrument, string, midi));

function figuresOf(part: Part, instrument: Instrument, marks: readonly SeatedMark[]): Figure[] {
  const onNote = new Map<string, SeatedMark[]>();
  for (const mark of marks) onNote.set(mark.note, [...(onNote.get(mark.note) ?? []), mark]);
  return part.measures.flatMap(({ start, notes }) =>
    notes.flatMap((note, i): Figure[] => {
      const midi = note.sounding ?? note.midi;
      if (midi === undefined || note.hidden) return [];
      const own = onNote.get(note.id) ?? [];
      const printed = printedOn(note);
      const cleared = own.some(({ value }) => slotOf(value) === 'finger');
      const values = [...printed, ...own.map(({ value }) => value)];
      const string = values.findLast((value) => value.kind === 'string')?.string as StringNumber | undefined;
      const inChord = note.chord === true || notes[i + 1]?.chord === true;
      const always = inChord || openOrStopped(instrument, midi) || values.some(({ kind }) => kind === 'reach' || kind === 'harmonic');
      const at = quarters(start) + quarters(note.onset);
      const rest = { note, ...(string ? { string } : {}), at, ends: at + quarters(note.duration) };
      const figure = (value: MarkValue, mark?: SeatedMark): Figure[] => (value.kind === 'finger' ? [{ ...rest, value, ...(mark ? { mark } : {}), always: always || value.substitution !== undefined }] : []);
      return [...(cleared ? [] : printed.flatMap((value) => figure(value))), ...own.flatMap((mark) => figure(mark.value, mark))];
    }),
  );
}

function placesFor(instrument: Instrument, { note, value, string }: Figure): HandPlace[] {
  const midi = note.sounding ?? note.midi;
  if (!note.pitch || midi === undefined || value.finger === 'thumb' || value.finger === 0) return [];
  return handPlaces(instrument, { pitch: note.pitch, midi, finger: value.finger as StoppingFinger, ...(string ? { string } : {}) });
}

/** The figures a player cannot do without, as one reader sees the part. */
function needed(instrument: Instrument, figures: readonly Figure[]): Set<Figure> {
  const kept = new Set<Figure>();
  let hand: readonly HandPlace[] = [];
  let before: Figure | null = null;
  for (const figure of figures) {
    if (before && figure.at - before.ends >= FORGOTTEN) hand = [];
    const places = placesFor(instrument, figure);
    const staying = places.filter((place) => hand.some((from) => handMoves(instrument, from, place) === 0));
    const again = before !== null && before.value.finger === figure.value.finger && figure.value.finger !== 0 && before.note.midi !== figure.note.midi;
    const slides = again && staying.some(({ string }) => hand.some((from) => from.string === string));
    if (figure.always || !staying.length || slides) kept.add(figure);
    // One finger twice is read as a pair: the second figure says nothing without the first.
    if (again && (slides || (hand.length > 0 && !staying.length))) kept.add(before!);
    if (figure.value.finger !== 0) hand = staying.length ? staying : places;
    before = figure;
  }
  return kept;
}

const rubbedOut = (note: Note, slot: 'finger' | 'string' | 'reach'): SeatedMark => ({ note: note.id, value: { kind: 'none', slot }, seats: 'all' });

/**
 * Marks as a copy with all, few or no figures shows them; printed figures that go are rubbed out by marks of kind "none". Bows stay, and words.
 * sparse: the first figure, the first after a shift or a long rest, open against stopped, reaches, harmonics, substitutions, double stops, one finger
 * sliding or shifting (both its figures); a figure stays if any reader needs it. Common practice, no source. Without an instrument known, sparse keeps all.
 * Example: `withFingerings(part, marks, 'none')` has no mark of kind "finger".
 */
export function withFingerings(part: Part, marks: readonly SeatedMark[], fingerings: Fingerings): SeatedMark[] {
  if (fingerings === 'all') return [...marks];
  const notes = part.measures.flatMap((measure) => measure.notes);
  if (fingerings === 'none') {
    const printed = notes.flatMap((note) => (['finger', 'string', 'reach'] as const).filter((slot) => printedOn(note).some((value) => slotOf(value) === slot)).map((slot) => rubbedOut(note, slot)));
    return [...printed, ...marks.filter(({ value }) => !LEFT_HAND.has(slotOf(value)))];
  }
  if (!part.instrument) return [...marks];
  const instrument = instrumentNamed(part.instrument);
  const seats = new Set(marks.flatMap((mark) => (mark.seats === 'all' ? [] : mark.seats)));
  const readings = (seats.size ? [...seats].map((seat) => marks.filter((mark) => isFor(mark.seats, seat))) : [marks]).map((read) => figuresOf(part, instrument, read));
  const kept = new Set<SeatedMark | string>();
  for (const figures of readings) for (const { mark, note } of needed(instrument, figures)) kept.add(mark ?? note.id);
  const gone = new Map(readings.flat().filter(({ mark, note }) => !mark && !kept.has(note.id)).map(({ note }) => [note.id, note]));
  return [...[...gone.values()].map((note) => rubbedOut(note, 'finger')), ...marks.filter((mark) => mark.value.kind !== 'finger' || kept.has(mark))];
}
