import type { SeatId } from '../music/seat.ts';
import type { Measure } from '../music/part.ts';
import { type Seconds, type TempoMap } from '../music/seconds.ts';
import { quarters } from '../music/time.ts';
import type { Voice } from './events.ts';
import type { StaggeredPassage } from './passages.ts';
import type { Direction, Instant, Stroke } from './strokes.ts';

/** One bow of one seat inside a passage. */
export interface SeatBow {
  begins: Instant;
  start: Seconds;
  end: Seconds;
  /** As marked; else the other way than the bow before, the first one down. */
  direction: Direction;
  /** Nothing says the direction: it follows from the bow before. */
  inferred: boolean;
}

export interface SectionPassage {
  /** Ordinals of its first and last measure. */
  from: number;
  to: number;
  start: Seconds;
  end: Seconds;
  /** Where each measure begins; the first may lie before `start`. */
  barlines: { ordinal: number; second: Seconds }[];
  seats: { seat: SeatId; bows: SeatBow[] }[];
}

interface Bows {
  seats: readonly SeatId[];
  strokes: readonly Stroke[][];
}

function bowsIn(strokes: readonly Stroke[], from: number, to: number): SeatBow[] {
  const bows: SeatBow[] = [];
  for (const stroke of strokes) {
    if (stroke.lastEvent < from || stroke.begins.event > to) continue;
    const before = bows.at(-1)?.direction;
    const direction = stroke.direction ?? (before === 'down' ? 'up' : 'down');
    bows.push({ begins: stroke.begins, start: stroke.begins.second, end: stroke.end, direction, inferred: stroke.direction === null });
  }
  return bows;
}

/**
 * Every seat's bows through each staggered passage, for drawing desks against time. Seconds count from the start of the part; seats front to back.
 * Invariant: the bows of a seat touch or leave rests, never overlap. A part without staggered passages gives none.
 * Example: two seats, one of which changes at 4 s under a slur of 8 s, give one passage with bows 0-8 and 0-4, 4-8.
 */
export function sectionPassages(passages: readonly StaggeredPassage[], voices: readonly Voice[], groups: readonly Bows[], seats: readonly SeatId[], measures: readonly Measure[], tempo: TempoMap): SectionPassage[] {
  return passages.map(({ voice: index, from, to }) => {
    const voice = voices[index]!;
    const [first, last] = [voice[from]!, voice[to]!];
    const bowsOf = new Map(groups.flatMap((group) => group.seats.map((seat) => [seat, bowsIn(group.strokes[index]!, from, to)] as const)));
    return {
      from: first.measure,
      to: last.measure,
      start: first.start,
      end: last.end,
      barlines: measures.filter(({ ordinal }) => ordinal >= first.measure && ordinal <= last.measure).map(({ ordinal, start }) => ({ ordinal, second: tempo.at(quarters(start)) })),
      seats: seats.map((seat) => ({ seat, bows: bowsOf.get(seat) ?? [] })),
    };
  });
}
