import type { Instrument } from '../instruments/instrument.ts';
import type { Place } from './frame.ts';
import type { LineNote } from './line.ts';
import { holdsTogether } from './stops.ts';

/** What begins together: one note, a double stop or a chord, with every way to hold it. */
export interface Layer {
  /** Indices into the line. */
  notes: number[];
  /** One place for each of the notes. */
  states: Place[][];
}

export interface Refusal {
  note: string;
  text: string;
}

export interface Layered {
  layers: Layer[];
  /** Notes that cannot be fingered; they are in no layer. */
  refusals: Refusal[];
}

/** Index of the layer that holds a note of the line, or -1: layers and their notes are in the order of the line. Logarithmic. */
export function layerOf(layers: readonly Layer[], note: number): number {
  let [from, to] = [0, layers.length - 1];
  while (from <= to) {
    const middle = (from + to) >> 1;
    const { notes } = layers[middle]!;
    if (notes.includes(note)) return middle;
    if (notes[0]! > note) to = middle - 1;
    else from = middle + 1;
  }
  return -1;
}

/** Ways to hold several notes at once, built up note by note. */
function together(instrument: Instrument, options: Place[][]): Place[][] {
  let states: Place[][] = [[]];
  options.forEach((places) => {
    states = states.flatMap((state) => places.filter((place) => compatible(instrument, state, place)).map((place) => [...state, place]));
  });
  return states.filter((state) => state.length === 1 || holdsTogether(instrument, state));
}

/** A quick test before the strings of the whole chord are known; open strings do not move the hand. */
function compatible(instrument: Instrument, state: Place[], place: Place): boolean {
  const agrees = (other: Place): boolean => other.string !== place.string && (other.finger !== 0 && place.finger !== 0 ? Math.abs(other.position - place.position) <= 1 : other.position === place.position);
  return state.every(agrees) && (state.length === 0 || instrument.openStrings.length >= state.length + 1);
}

/**
 * Groups a line into what begins together and finds every way to hold it. `placesOf` gives the places of one note, with the wide reaches of chords
 * where `all` is set. A note without a place is refused by name, and so is a chord's note that no hand holds with the rest; the others go on.
 */
export function layersOf(instrument: Instrument, line: readonly LineNote[], placesOf: (index: number, all: boolean) => Place[]): Layered {
  const layers: Layer[] = [];
  const refusals: Refusal[] = [];
  for (let i = 0; i < line.length; ) {
    let end = i + 1;
    while (end < line.length && line[end]!.chord) end += 1;
    const notes: number[] = [];
    for (let j = i; j < end; j += 1) {
      if (placesOf(j, false).length > 0) notes.push(j);
      else refusals.push({ note: line[j]!.id, text: `This note lies outside the ${instrument.name}, or its marks leave no way to play it. Change the marks or give it to another part.` });
    }
    i = end;
    const { held, dropped } = holdOrBreak(instrument, line, notes, placesOf);
    layers.push(...held);
    for (const j of dropped) refusals.push({ note: line[j]!.id, text: 'One hand cannot hold this note with the others of its chord. Divide the chord, or break it.' });
  }
  return { layers, refusals };
}

function held(instrument: Instrument, notes: number[], placesOf: (index: number, all: boolean) => Place[]): Place[][] {
  const usual = together(instrument, notes.map((j) => placesOf(j, false)));
  return usual.length > 0 || notes.length === 1 ? usual : together(instrument, notes.map((j) => placesOf(j, true)));
}

/** A chord as one layer; one of three or four notes that no hand holds at once is broken, the lower two and then the rest; else its last notes are dropped. */
function holdOrBreak(instrument: Instrument, line: readonly LineNote[], notes: number[], placesOf: (index: number, all: boolean) => Place[]): { held: Layer[]; dropped: number[] } {
  const hold = (some: number[]): Layer[] => {
    const states = some.length === 0 ? [] : held(instrument, some, placesOf);
    return states.length > 0 ? [{ notes: some, states }] : [];
  };
  const whole = hold(notes);
  if (whole.length > 0 || notes.length < 2) return { held: whole, dropped: [] };
  if (notes.length > 2) {
    const upwards = [...notes].sort((a, b) => line[a]!.midi - line[b]!.midi);
    const broken = [upwards.slice(0, 2), upwards.slice(2)].map((half) => hold(half.sort((a, b) => a - b)));
    if (broken.every(({ length }) => length > 0)) return { held: broken.flat(), dropped: [] };
  }
  const rest = holdOrBreak(instrument, line, notes.slice(0, -1), placesOf);
  return { held: rest.held, dropped: [...rest.dropped, notes.at(-1)!] };
}
