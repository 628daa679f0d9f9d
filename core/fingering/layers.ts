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
    let notes: number[] = [];
    for (let j = i; j < end; j += 1) {
      if (placesOf(j, false).length > 0) notes.push(j);
      else refusals.push({ note: line[j]!.id, text: `This note lies outside the ${instrument.name}, or its marks leave no way to play it. Change the marks or give it to another part.` });
    }
    i = end;
    while (notes.length > 0) {
      const states = held(instrument, notes, placesOf);
      if (states.length > 0) {
        layers.push({ notes, states });
        break;
      }
      const dropped = notes.at(-1)!;
      refusals.push({ note: line[dropped]!.id, text: 'One hand cannot hold this note with the others of its chord. Divide the chord, or break it.' });
      notes = notes.slice(0, -1);
    }
  }
  return { layers, refusals };
}

function held(instrument: Instrument, notes: number[], placesOf: (index: number, all: boolean) => Place[]): Place[][] {
  const usual = together(instrument, notes.map((j) => placesOf(j, false)));
  return usual.length > 0 || notes.length === 1 ? usual : together(instrument, notes.map((j) => placesOf(j, true)));
}
