import { type BowEvent, bowEvents, type Voice } from '../../../core/bowing/events.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import type { Instrument } from '../../../core/instruments/instrument.ts';
import type { Finger, Mark, MarkValue } from '../../../core/music/mark.ts';
import type { Note, StringPart } from '../../../core/music/part.ts';
import { slurredNotes } from '../../../core/music/slurredNotes.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import { bows, type Passage } from './marked.ts';

export interface Bow {
  notes: string[];
  begins: number;
  ends: number;
  direction: 'up' | 'down';
  measure: number;
}

/** A marked part with what a fault is planted by. Nothing here comes from the checker. */
export interface House {
  part: StringPart;
  instrument: Instrument;
  voices: readonly Voice[];
  events: ReadonlyMap<string, BowEvent>;
  notes: ReadonlyMap<string, Note>;
  measureOf: ReadonlyMap<string, number>;
  strokes: readonly Bow[][];
  marks: readonly Mark[];
  /** Plans for staggered changes, and all of their marks. */
  passages: readonly Passage[];
  planned: readonly Mark[];
  /** Notes that follow another under a printed slur. */
  inSlur: ReadonlySet<string>;
}

export function houseOf(part: StringPart, marks: readonly Mark[], passages: readonly Passage[]): House {
  const voices = bowEvents(part, tempoMap(part, 90));
  const notes = part.measures.flatMap((measure) => measure.notes);
  return {
    part,
    instrument: instrumentNamed(part.instrument),
    voices,
    events: new Map(voices.flat().flatMap((event) => event.notes.map((note) => [note.id, event] as const))),
    notes: new Map(notes.map((note) => [note.id, note])),
    measureOf: new Map(part.measures.flatMap(({ ordinal, notes: inIt }) => inIt.map(({ id }) => [id, ordinal] as const))),
    strokes: bows(part).strokes,
    marks,
    passages,
    planned: passages.flatMap((passage) => passage.marks),
    inSlur: slurredNotes(part),
  };
}

export const markOn = (house: House, note: string, kind: MarkValue['kind']): Mark | undefined => house.marks.findLast((mark) => mark.note === note && mark.value.kind === kind);

export function fingerOn(house: House, note: string): Finger | undefined {
  const value = markOn(house, note, 'finger')?.value;
  return value?.kind === 'finger' ? value.finger : undefined;
}

export function stringOn(house: House, note: string): number | undefined {
  const value = markOn(house, note, 'string')?.value;
  return value?.kind === 'string' ? value.string : undefined;
}

/** Semitones that sound above the open string. */
export const above = ({ instrument }: House, note: Note, string: number): number => (note.sounding ?? note.midi!) - instrument.openStrings[string - 1]!;
