import type { Instrument } from '../../../instruments/instrument.ts';
import type { Measure } from '../../../music/part.ts';
import { deskOf, isOutside, type SeatId } from '../../../music/seat.ts';
import type { Seconds } from '../../../music/seconds.ts';
import { bowDynamic, type BowTable, type Dynamic, secondsPerBow } from '../../bowLength.ts';
import type { Swell } from '../../direction/swells.ts';
import type { Voice } from '../../events.ts';
import type { StaggerProblem, StaggerSettings } from '../problem.ts';
import type { StretchEnds } from './directions.ts';
import { peakWeights } from './peak.ts';
import { type ChangePlace, placesIn } from './places.ts';
import type { Stretch } from './stretch.ts';

/** A stretch of a part, who plays it and what the section has settled. */
export interface StretchToPlan extends StretchEnds {
  voice: Voice;
  stretch: Stretch;
  measures: readonly Measure[];
  /** Hairpins of the part. */
  swells: readonly Swell[];
  instrument: Instrument;
  /** Who plays: the absent are not among them. */
  seats: readonly SeatId[];
  /** Notes to which the hand of a seat shifts. */
  shiftsOf(seat: SeatId): ReadonlySet<string>;
  bowSeconds: BowTable;
  assumedDynamic: Dynamic;
  partnersApart: Seconds;
  /** Quarters of one subdivision; 0 where only the moment counts. */
  partnersSubdivision: number;
  togetherWithin: Seconds;
  togetherShare: number;
}

/** The problem, and the place in the part of each of its instants. */
export interface PlacedProblem {
  problem: StaggerProblem;
  settings: StaggerSettings;
  places: readonly ChangePlace[];
}

/** What a bow lasts comfortably, of what it lasts at most; chosen, not measured. */
const COMFORTABLE = 2 / 3;
/** Sums of seconds along the part are exact to much less than this; taken off the limit so that a bow is never a rounding too long. */
const ROUNDING: Seconds = 1e-6;

/**
 * A stretch of a part as a problem for the planner. Seconds count from the start of the stretch. A bow lasts as long as at its loudest dynamic.
 * @returns the problem with one instant a place, players in the order of their seats, their seats as ids
 * Example: four bars held at pp by 1o, 1i and 2o: three players of 12 s bows, the last desk with one.
 */
export function problemOf(asked: StretchToPlan): PlacedProblem {
  const { voice, stretch, seats, shiftsOf, partnersSubdivision } = asked;
  const [first, last] = [voice[stretch.from]!, voice[stretch.to]!];
  const places = placesIn(voice, stretch, asked.measures);
  const weights = peakWeights(voice, stretch, places, asked.swells, asked.assumedDynamic);
  const limit = Math.min(...voice.slice(stretch.from, stretch.to + 1).map(({ head }) => secondsPerBow(asked.instrument, bowDynamic(head.dynamic, asked.assumedDynamic), asked.bowSeconds)));
  const subdivision = ({ measure, at }: ChangePlace, i: number) => (partnersSubdivision > 0 ? `${measure}@${Math.floor(at / partnersSubdivision)}` : i);
  return {
    places,
    settings: { partnerApart: asked.partnersApart, crowdWindow: asked.togetherWithin, crowdShare: asked.togetherShare },
    problem: {
      instants: places.map((place, i) => ({ time: place.second - first.start, onBarline: place.onBarline, onBeat: place.onBeat, subdivision: subdivision(place, i), weight: weights[i]! })),
      duration: last.end - first.start,
      players: seats.map((seat) => {
        const shifts = shiftsOf(seat);
        return {
          id: seat,
          desk: deskOf(seat),
          seat: isOutside(seat) ? ('outside' as const) : ('inside' as const),
          limit: limit - ROUNDING,
          comfortable: limit * COMFORTABLE,
          shifts: places.flatMap(({ note, after }, i) => (after === 0 && shifts.has(note) ? [i] : [])),
        };
      }),
      start: asked.start,
      end: asked.end,
    },
  };
}
