import type { SeatId } from '../music/seat.ts';
import type { Voice } from './events.ts';
import type { Instant, Stroke } from './strokes.ts';

/** A bow change one or some players make by a mark of their own, not where all do. */
export interface OwnChange {
  instant: Instant;
  seats: SeatId[];
}

/** A stretch without a bow change common to all, in which players change at different places. */
export interface StaggeredPassage {
  voice: number;
  /** Indexes of its first and last event. */
  from: number;
  to: number;
  changes: OwnChange[];
}

interface Bowing {
  seats: readonly SeatId[];
  strokes: readonly Stroke[][];
}

const keyOf = ({ measure, at }: Instant): string => `${measure}@${at}`;

/** Changes that not everybody makes and that are not printed, with those who make them, in order of time. */
function ownChanges(printed: readonly Stroke[], groups: readonly { seats: readonly SeatId[]; strokes: readonly Stroke[] }[], sustained: (instant: Instant) => boolean): OwnChange[] {
  const common = new Set(printed.map((stroke) => keyOf(stroke.begins)));
  const found = new Map<string, OwnChange & { groups: number }>();
  for (const { seats, strokes } of groups) {
    for (const { begins } of strokes) {
      const key = keyOf(begins);
      if (common.has(key) || !sustained(begins)) continue;
      const change = found.get(key) ?? found.set(key, { instant: begins, seats: [], groups: 0 }).get(key)!;
      change.seats.push(...seats);
      change.groups++;
    }
  }
  return [...found.values()]
    .filter((change) => change.groups < groups.length)
    .sort((a, b) => a.instant.second - b.instant.second)
    .map(({ instant, seats }) => ({ instant, seats }));
}

/**
 * The staggered passages of a part: stretches under one printed slur or tie (or joined by marks) inside which some seats change bow and others do not.
 * A change that everyone makes, and one at a printed slur's end, belongs to no passage. Each change names all who make it.
 * Example: under a slur of eight measures, 1o changing in the third and 1i in the fifth make one passage with two changes.
 */
export function staggeredPassages(voices: readonly Voice[], printed: readonly Stroke[][], groups: readonly Bowing[]): StaggeredPassage[] {
  if (groups.length < 2) return [];
  return voices.flatMap((voice, index) => {
    // A bow that goes on past this event for the print or for anyone ties it to the next one.
    const held = new Uint8Array(voice.length);
    for (const strokes of [printed[index]!, ...groups.map((group) => group.strokes[index]!)]) {
      for (const stroke of strokes) for (let event = stroke.begins.event; event < stroke.lastEvent; event++) held[event] = 1;
    }
    const sustained = ({ event, inside }: Instant) => inside || held[event - 1] === 1;
    const passages: StaggeredPassage[] = [];
    for (const change of ownChanges(printed[index]!, groups.map((group) => ({ seats: group.seats, strokes: group.strokes[index]! })), sustained)) {
      const last = passages.at(-1);
      if (last && change.instant.event <= last.to) {
        last.changes.push(change);
        continue;
      }
      let [from, to] = [change.instant.event, change.instant.event];
      while (from > 0 && held[from - 1]) from--;
      while (held[to]) to++;
      passages.push({ voice: index, from, to, changes: [change] });
    }
    return passages;
  });
}
