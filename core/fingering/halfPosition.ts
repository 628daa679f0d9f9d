import type { Instrument } from '../instruments/instrument.ts';
import type { Place } from './frame.ts';

/** Semitones above the open string that only the half position has under a finger, and those that only first position has. */
const HALF_ALONE: Readonly<Record<number, number>> = { 2: 2, 3: 4 };
const FIRST_ALONE: Readonly<Record<number, number>> = { 1: 2, 2: 4, 3: 6, 4: 7 };

/**
 * Which notes of a violin or viola are played in half position. Model: the notes between two that first position alone has under a finger are half
 * position where 2 or 3 lies a semitone back among them; a low 1 by itself stays first position. None on cello and bass, whose
 * positions are counted by the semitone. Example: A sharp with 1 and B with 2 on the A string are half position.
 */
export function halfPositions(instrument: Instrument, places: readonly Place[]): boolean[] {
  const half = Array<boolean>(places.length).fill(false);
  if (instrument.positionsBy === 'semitone') return half;
  for (let from = 0; from < places.length; ) {
    let to = from;
    while (to < places.length && places[to]!.position === 1 && !isAt(FIRST_ALONE, places[to]!)) to += 1;
    if (places.slice(from, to).some((place) => isAt(HALF_ALONE, place))) half.fill(true, from, to);
    from = Math.max(to, from + 1);
  }
  return half;
}

const isAt = (table: Readonly<Record<number, number>>, { finger, above }: Place): boolean => table[finger] === above;
