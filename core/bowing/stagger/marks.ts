import type { Mark, MarkValue } from '../../music/mark.ts';
import type { SeatId } from '../../music/seat.ts';
import { compareTimes, type ExactTime } from '../../music/time.ts';
import type { Voice } from '../events.ts';
import type { BowSigns, Direction } from '../strokes.ts';
import type { ChangePlace } from './passage/places.ts';
import type { Stretch } from './passage/stretch.ts';

/** What a plan is laid over. */
export interface PlanToMark {
  voice: Voice;
  stretch: Stretch;
  places: readonly ChangePlace[];
  /** Direction of everybody's first bow. */
  start: Direction;
  /** The seats that play, as the players of the plan. */
  seats: readonly SeatId[];
  /** True when nobody of the section is away: marks for all need then name no seats. */
  everybody: boolean;
  /** Marks in force and printed signs, by seat and note id. */
  signsOn(seat: SeatId, note: string): BowSigns;
}

const has = (list: readonly ExactTime[], after: ExactTime): boolean => list.some((other) => compareTimes(other, after) === 0);

/** What must be added on one note of one seat so that its bow changes at `planned` there and nowhere else. */
function marksOn(signs: BowSigns, planned: readonly ExactTime[], isFirst: boolean, joins: boolean): MarkValue[] {
  const values: MarkValue[] = [];
  if (!isFirst && signs.bow) values.push({ kind: 'none', slot: 'bow' });
  if (!isFirst && signs.retake) values.push({ kind: 'none', slot: 'retake' });
  if (joins && signs.slur !== 'join') values.push({ kind: 'slur', slur: 'join' });
  if (!joins && !isFirst && signs.slur === 'split') values.push({ kind: 'none', slot: 'slur' });
  for (const after of signs.changes) if (!has(planned, after) && !(isFirst && compareTimes(after, 0) === 0)) values.push({ kind: 'none', slot: 'change', after });
  for (const after of planned) if (!has(signs.changes, after)) values.push({ kind: 'change', after });
  return values;
}

/**
 * A plan as marks: each change on the part of its own seat only; slurs that follow each other are joined for all, changes of an older plan and signs
 * that would end a bow inside the stretch are rubbed out. Marks that stand already are not given again.
 * @param plan indexes into `places`, one list a seat
 * @returns in order of the music; seats that get the same mark share it. Invariant: with these marks each seat's bows begin exactly where the plan says.
 * Example: 1o changing three quarters into the first note gives one mark `change` after 3 for ["1o"].
 */
export function staggerMarks({ voice, stretch, places, start, seats, everybody, signsOn }: PlanToMark, plan: readonly (readonly number[])[]): Mark[] {
  const marks = new Map<string, { note: string; value: MarkValue; seats: SeatId[] }>();
  const planned = (s: number, e: number) => plan[s]!.flatMap((i) => (places[i]!.event === e ? [places[i]!.after] : []));
  const sounding = voice.findIndex((event, e) => e >= stretch.from && event.to > event.from);
  const add = (note: string, value: MarkValue, seat: SeatId) => {
    const key = `${note} ${JSON.stringify(value)}`;
    const mark = marks.get(key);
    if (mark) mark.seats.push(seat);
    else marks.set(key, { note, value, seats: [seat] });
  };
  for (let e = stretch.from; e <= stretch.to; e++) {
    const event = voice[e]!;
    const note = event.head.id;
    const isFirst = e <= sounding;
    const joins = e < stretch.to && !voice[e + 1]!.bound;
    seats.forEach((seat, s) => {
      const signs = signsOn(seat, note);
      if (e === sounding && signs.bow !== start) add(note, { kind: 'bow', bow: start }, seat);
      for (const value of marksOn(signs, planned(s, e), isFirst, joins)) add(note, value, seat);
    });
  }
  return [...marks.values()].map(({ note, value, seats: whose }) => ({ note, value, ...(everybody && whose.length === seats.length ? {} : { seats: whose }) }));
}
