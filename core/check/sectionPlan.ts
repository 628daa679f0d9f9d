import { endsOf } from '../bowing/stagger/passage/directions.ts';
import { type PlacedProblem, problemOf } from '../bowing/stagger/passage/problemOf.ts';
import { stretchOf, type StretchRefusal } from '../bowing/stagger/passage/stretch.ts';
import { staggerMarks } from '../bowing/stagger/marks.ts';
import { swellsOf } from '../bowing/direction/swells.ts';
import { type Direction, strokesOf } from '../bowing/strokes.ts';
import type { Mark } from '../music/mark.ts';
import type { StringPart } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import { checkContext } from './context.ts';
import type { CheckInput } from './finding.ts';
import { type NoteMarks, seatMarks } from './seatMarks.ts';
import { CheckSettings } from './settings.ts';
import { shiftReader } from './shifts.ts';

export interface PlanRequest extends Omit<CheckInput, 'part'> {
  part: StringPart;
  /** Notes between which changes are to be shared out. */
  first: string;
  last: string;
  /** Seats nobody sits on: they get no changes and count for nothing. */
  absent: readonly SeatId[];
  /** Directions of the first and last bow, where they are not to follow from the bows around the passage. */
  start?: Direction;
  end?: Direction | null;
}

/** A passage of the section's part, ready to be planned. */
export interface SectionProblem extends PlacedProblem {
  /** Ordinals of its first and last measure. */
  from: number;
  to: number;
  /** The marks that say a plan: indexes of instants, one list a player. */
  marksFor(plan: readonly (readonly number[])[]): Mark[];
}

/**
 * A passage of a part as a problem for the planner, with the marks in force and the section's settings as the checker reads them: who shifts where is
 * taken from each seat's own fingers. Refuses a passage that cannot be one line, and a section of nobody.
 * Throws on settings of wrong form. Invariant: the marks of a plan that holds every rule give no finding of the rules about desks and crowding.
 * Example: eight held bars and twelve seats give twelve players, and marks with their changes.
 */
export function sectionProblem(request: PlanRequest): { planned: SectionProblem } | { refusal: StretchRefusal | { code: 'NOBODY'; text: string } } {
  const { part, marks, first, last, absent } = request;
  const settings = CheckSettings.parse(request.settings);
  const seats = request.seats.filter((seat) => !absent.includes(seat));
  if (seats.length === 0) return { refusal: { code: 'NOBODY', text: 'Nobody is there to share the changes. Say who plays.' } };
  const context = checkContext(part, seats, marks, settings);
  const found = stretchOf(context.voices, context.printed, part.measures, first, last);
  if ('refusal' in found) return found;
  const { stretch } = found;
  const voice = context.voices[stretch.voice]!;
  const common = strokesOf(voice, seatMarks(part, marks, seats).forAll);
  const firstBow = common.findLastIndex(({ begins }) => begins.event <= stretch.from && !begins.inside);
  const lastBow = common.findLastIndex(({ begins }) => begins.event <= stretch.to);
  const ends = endsOf(common, firstBow, lastBow, settings.retakeRest);
  const seen = new Map<SeatId, (note: string) => NoteMarks>(context.groups.flatMap((group) => group.seats.map((seat) => [seat, group.marksOn] as const)));
  const shiftsOf = shiftReader(context);
  const shifts = new Map<SeatId, ReadonlySet<string>>(context.groups.flatMap((group) => {
    const notes = new Set(shiftsOf(group).map(({ event }) => event.head.id));
    return group.seats.map((seat) => [seat, notes] as const);
  }));
  const start = request.start ?? ends.start;
  const placed = problemOf({
    ...settings,
    voice,
    stretch,
    measures: part.measures,
    swells: swellsOf(part),
    instrument: context.instrument,
    seats,
    shiftsOf: (seat) => shifts.get(seat)!,
    start,
    end: request.end === undefined ? ends.end : request.end,
  });
  return {
    planned: {
      ...placed,
      from: voice[stretch.from]!.measure,
      to: voice[stretch.to]!.measure,
      marksFor: (plan) => staggerMarks({ voice, stretch, places: placed.places, start, seats, everybody: seats.length === request.seats.length, signsOn: (seat, note) => seen.get(seat)!(note) }, plan),
    },
  };
}
