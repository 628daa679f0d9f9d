import { carryMarks, type CarriedMarks, type ChangedPlace, type LostMark, type WhyNotCarried } from '../matching/editions/carryMarks.ts';
import { type Mark, slotKey } from '../music/mark.ts';
import type { Measure, Part } from '../music/part.ts';
import type { Seats } from '../music/seat.ts';
import type { AgreementState } from './state.ts';

/** A mark that did not go along with a corrected edition. */
export interface CarriedMark {
  /** Names it for good. */
  key: string;
  mark: Mark;
  seats: Seats;
  /** The slip it is written on. */
  proposal: string;
  /** Inked in, or on an open slip. */
  isInk: boolean;
  /** Ordinal in the older edition. */
  measure: number;
  why: WhyNotCarried;
  maybe: LostMark['maybe'];
}

/** Measures of one edition at a changed place. */
export interface PlaceMeasures {
  from: number;
  to: number;
  measures: Measure[];
}

/** A place that differs between two editions, or where marks did not go along. */
export interface CarriedPlace {
  before: PlaceMeasures | null;
  after: PlaceMeasures | null;
  marks: CarriedMark[];
  /** What was said there and is not settled; ids. */
  comments: string[];
  /** Findings put to rest on notes that are gone; ids. They are asked again. */
  mutes: string[];
}

type Found = Omit<CarriedMark, 'measure' | 'why' | 'maybe'>;

function marksIn(state: AgreementState): Found[] {
  const ink = state.ink.filter(({ superseded }) => !superseded).map(({ mark, seats, proposal }) => ({ mark, seats, proposal, isInk: true }));
  const open = Object.values(state.proposals).filter(({ status }) => status === 'open');
  const slips = open.flatMap(({ id, seats, marks }) => marks.map((mark) => ({ mark, seats: mark.seats ?? seats, proposal: id, isInk: false })));
  return [...ink, ...slips].map((one) => ({ key: [one.isInk ? 'ink' : 'slip', one.proposal, one.mark.note, slotKey(one.mark.value)].join(' '), ...one }));
}

const rangeOf = (part: Part, range: { from: number; to: number } | null): PlaceMeasures | null => range && { ...range, measures: part.measures.slice(range.from - 1, range.to) };
const holds = (range: { from: number; to: number } | null, measure: number): boolean => range !== null && range.from <= measure && measure <= range.to;

/** A changed place, or the measure of a mark whose surroundings did not change. */
function placesWith(changed: readonly ChangedPlace[], lost: readonly LostMark[], measures: readonly number[]): ChangedPlace[] {
  const places = [...changed];
  for (const { measure, maybe } of lost) {
    if (measure === null || places.some(({ before }) => holds(before, measure))) continue;
    const there = maybe?.measure ?? measures[measure - 1]!;
    places.push({ before: { from: measure, to: measure }, after: { from: there, to: there } });
  }
  const start = ({ before, after }: ChangedPlace): number => before?.from ?? measures.findIndex((now) => now >= after!.from) + 0.5;
  return places.toSorted((a, b) => start(a) - start(b));
}

/** Old ordinals of the notes that findings were put to rest on and that are gone, by the mute's id. */
function mutesGone(state: AgreementState, older: Part, newer: Part): Map<string, number> {
  const there = new Set(newer.measures.flatMap(({ notes }) => notes.map(({ id }) => id)));
  const gone = new Map(older.measures.flatMap(({ ordinal, notes }) => notes.filter(({ id }) => !there.has(id)).map(({ id }): [string, number] => [id, ordinal])));
  return new Map(Object.values(state.mutes).flatMap(({ id, place }): [string, number][] => {
    const measure = place.split(/[^\w-]+/).map((word) => gone.get(word)).find((ordinal) => ordinal !== undefined);
    return measure === undefined ? [] : [[id, measure]];
  }));
}

/**
 * What did not go along when `newer` was laid over `older` (whose notes kept their ids where they are the same), place by place in the order of the older
 * edition: marks inked in or on open slips, what was said and is not settled, findings put to rest. Places where nothing stood are told too.
 * `state` is that after the edition was laid over. Example: a corrected note with a fingering gives one place with one mark, 'changed'.
 */
export function carriedPlaces(state: AgreementState, older: Part, newer: Part): CarriedPlace[] {
  const found = marksIn(state);
  const here = new Set(older.measures.flatMap(({ notes }) => notes.map(({ id }) => id)));
  const known = found.filter(({ mark }) => here.has(mark.note));
  const told: CarriedMarks = carryMarks(older, newer, known.map(({ mark }) => mark));
  const byMark = new Map(told.lost.map((one) => [one.mark, one]));
  const marks = known.flatMap((one): CarriedMark[] => {
    const lost = byMark.get(one.mark);
    return lost ? [{ ...one, measure: lost.measure!, why: lost.why, maybe: lost.maybe }] : [];
  });
  const mutes = mutesGone(state, older, newer);
  const lonely = [...mutes.values()].map((measure): LostMark => ({ mark: { note: '', value: { kind: 'retake' } }, measure, why: 'gone', maybe: null }));
  return placesWith(told.changed, [...told.lost, ...lonely], told.measures).map(({ before, after }) => {
    const isHere = (measure: number) => holds(after, measure) || (before !== null && told.measures.slice(before.from - 1, before.to).includes(measure));
    return {
      before: rangeOf(older, before),
      after: rangeOf(newer, after),
      marks: marks.filter(({ measure }) => holds(before, measure)),
      comments: Object.values(state.comments).filter(({ resolved, measure }) => !resolved && isHere(measure)).map(({ id }) => id),
      mutes: [...mutes].filter(([, measure]) => holds(before, measure)).map(([id]) => id),
    };
  });
}
