import { type HandPlace, handMoves } from '../hand/handPlace.ts';
import { placeOnString } from '../hand/place.ts';
import { reachOf } from '../hand/reach.ts';
import type { Instrument, Millimetres, Semitones } from '../instruments/instrument.ts';
import type { MarkedStep, MarkedStop } from './markedSteps.ts';

/** One way to read a marked step: on these strings. */
export interface StepReading {
  a: HandPlace;
  b: HandPlace;
  /** Of the hand; 0 where it stays. */
  moves: Semitones;
  /** The same along the string; 0 where the hand stays or the fingers reach. */
  mm: Millimetres;
  /** The fingers reach from one note to the other, in order, without the hand. */
  reached: boolean;
}

/** Fingers on different strings may cross by this much: chosen, not measured. */
const CROSSING: Semitones = 1;

const aboveOf = (instrument: Instrument, stop: MarkedStop, place: HandPlace): Semitones => (stop.event.head.sounding ?? stop.event.head.midi!) - instrument.openStrings[place.string - 1]!;

function isReached(instrument: Instrument, from: MarkedStop, to: MarkedStop, a: HandPlace, b: HandPlace): boolean {
  if (from.finger === to.finger) return false;
  const [one, other] = [aboveOf(instrument, from, a), aboveOf(instrument, to, b)];
  const upward = Math.sign(to.finger - from.finger) * (other - one);
  const span = Math.abs(placeOnString(other, instrument.stringLength) - placeOnString(one, instrument.stringLength));
  return upward >= (a.string === b.string ? 0 : -CROSSING) && span <= reachOf(instrument.name, from.finger, to.finger).stretched;
}

/** All ways to read a step over the strings its marks leave open. Never empty. */
export function readingsOf(instrument: Instrument, { from, to }: Pick<MarkedStep, 'from' | 'to'>): StepReading[] {
  return from.places.flatMap((a) =>
    to.places.map((b): StepReading => {
      const moves = handMoves(instrument, a, b);
      const reached = moves > 0 && isReached(instrument, from, to, a, b);
      const travel = Math.abs(placeOnString(b.finger1, instrument.stringLength) - placeOnString(a.finger1, instrument.stringLength));
      return { a, b, moves, mm: moves === 0 || reached ? 0 : travel, reached };
    }),
  );
}

/** The reading that asks least of the hand, so that nothing is claimed that a choice of string or a reach would avoid. Example: 0 mm within one position. */
export function leastReading(instrument: Instrument, step: Pick<MarkedStep, 'from' | 'to'>): StepReading {
  return readingsOf(instrument, step).reduce((best, reading) => (reading.mm < best.mm ? reading : best));
}
