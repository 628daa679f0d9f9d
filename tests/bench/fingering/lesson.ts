import { contextsOf } from '../../../core/fingering/fit/context.ts';
import { placeSlots, stepSlots } from '../../../core/fingering/fit/score.ts';
import { Slots } from '../../../core/fingering/fit/slots.ts';
import { emptyStep } from '../../../core/fingering/fit/step.ts';
import type { Place } from '../../../core/fingering/frame.ts';
import type { LineNote } from '../../../core/fingering/line.ts';
import type { Label, Piece } from './pieces.ts';

/** The features of one note: a row of `perPlace` slots for each place, then a row of `perStep` slots for each step from the note before. Short rows end in -1. */
export interface NoteFeatures {
  places: Int32Array;
  steps: Int32Array;
}

/** A piece ready for training: features, and per player the index of the place taken (imputed where the label is no place). */
export interface Lesson {
  features: NoteFeatures[];
  /** Number of places per note. */
  sizes: number[];
  /** players x notes. */
  taken: Int16Array[];
  weight: number;
}

export const PER_PLACE = 40;
export const PER_STEP = 36;

function indexOf(places: Place[], label: Label | null): number {
  if (label === null) return -1;
  return places.findIndex((p) => p.string === label.string && p.finger === label.finger && p.position === Math.max(1, label.position) && (label.off === undefined || p.off === label.off));
}

/** Where a label is no place: same string and finger, else the first place on that string, else the first of all. */
function nearest(places: Place[], label: Label | null): number {
  if (label === null) return 0;
  const graded = places.map((p) => (p.string === label.string ? 4 : 0) + (p.finger === label.finger ? 2 : 0) - Math.abs(p.position - label.position) / 16);
  return graded.indexOf(Math.max(...graded));
}

function featuresOf(line: LineNote[], places: Place[][]): NoteFeatures[] {
  const contexts = contextsOf(line);
  const slots = new Slots();
  const step = emptyStep();
  return places.map((here, i) => {
    const before = i === 0 ? [] : places[i - 1]!;
    const placeRows = new Int32Array(here.length * PER_PLACE).fill(-1);
    const stepRows = new Int32Array(here.length * before.length * PER_STEP).fill(-1);
    here.forEach((place, b) => {
      placeSlots(slots, contexts[i]!, place);
      placeRows.set(slots.at.subarray(0, slots.count), b * PER_PLACE);
      before.forEach((other, a) => {
        stepSlots(slots, step, contexts[i - 1]!, contexts[i]!, other, place);
        stepRows.set(slots.at.subarray(0, slots.count), (a * here.length + b) * PER_STEP);
      });
    });
    return { places: placeRows, steps: stepRows };
  });
}

function commonest(votes: number[]): number {
  const count = (v: number): number => votes.filter((other) => other === v).length;
  return votes.reduce((best, v) => (count(v) > count(best) ? v : best));
}

export function lessonOf(piece: Piece, weight: number, placesOf: (note: LineNote) => Place[]): Lesson {
  const places = piece.line.map(placesOf);
  const exact = piece.players.map((labels) => labels.map((label, i) => indexOf(places[i]!, label)));
  const consensus = piece.line.map((_, i) => {
    const votes = exact.map((indices) => indices[i]!).filter((index) => index >= 0);
    return votes.length === 0 ? nearest(places[i]!, piece.players[0]![i] ?? null) : commonest(votes);
  });
  return {
    features: featuresOf(piece.line, places),
    sizes: places.map((here) => here.length),
    weight,
    taken: exact.map((indices) => Int16Array.from(indices, (index, i) => (index >= 0 ? index : consensus[i]!))),
  };
}
