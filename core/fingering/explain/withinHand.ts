import { USUAL_HAND } from '../../hand/reach.ts';
import type { Instrument } from '../../instruments/instrument.ts';
import type { Aim } from '../aims.ts';
import { fingerLine, type FingerLineOptions } from '../fingerLine.ts';
import type { LineNote } from '../line.ts';
import type { PlainFingering } from '../output.ts';
import type { Pin } from '../pin.ts';
import { handFacts, type StepFacts } from './handFacts.ts';
import type { PlayedLine } from './playedLine.ts';
import type { Stretch } from './stretches.ts';

export interface WithinHand {
  /** The best found; within the hand unless `stillBeyond` names stretches. */
  fingering: PlainFingering;
  /** What of the first fingering lies beyond the hand. */
  beyond: Stretch[];
  /** Notes to which the section shifts, kept. */
  kept: string[];
  /** Those that had to give way. */
  lost: string[];
  stillBeyond: Stretch[];
}

/** A shift of the section: the note it comes to, where it stands in the fingering, and what keeps it there. */
interface ShiftPoint {
  note: string;
  at: number;
  pins: [string, Pin][];
}

const beyondIn = (steps: readonly StepFacts[]): Stretch[] => steps.flatMap(({ stretch }) => (stretch?.zone === 'exceptional' ? [stretch] : []));

function shiftPoints(steps: readonly StepFacts[]): ShiftPoint[] {
  const pinOf = ({ string, finger, position }: StepFacts): Pin => (finger === 0 ? { string } : { string, position });
  return steps.flatMap((step, at) => {
    const before = steps[at - 1];
    if (!step.shifts || before === undefined) return [];
    return [{ note: step.note, at, pins: [[before.note, pinOf(before)], [step.note, pinOf(step)]] }];
  });
}

function pinsWith(own: ReadonlyMap<string, Pin>, points: readonly ShiftPoint[]): Map<string, Pin> {
  const pins = new Map(own);
  for (const [note, pin] of points.flatMap((point) => point.pins)) pins.set(note, { ...pin, ...own.get(note) });
  return pins;
}

interface Found {
  fingering: PlainFingering;
  stillBeyond: Stretch[];
}

/** The first fingering within the hand under these pins, or else the one that lies least beyond it; null where the pins leave a note without a place. */
function bestWithin(played: PlayedLine, tempo: number, options: FingerLineOptions, notes: number): Found | null {
  const aims: Aim[] = [options.aim ?? 'usual', 'smallest-stretch'];
  const found = aims.flatMap((aim) => fingerLine(played.instrument, played.line, tempo, { ...options, aim }).fingerings)
    .filter((fingering) => fingering.notes.length >= notes)
    .map((fingering): Found => ({ fingering, stillBeyond: beyondIn(handFacts(played, fingering).steps) }));
  return found.reduce<Found | null>((best, other) => (best === null || other.stillBeyond.length < best.stillBeyond.length ? other : best), null);
}

/** The shift nearest to a stretch beyond the hand: the first to give way. */
function nearest(points: readonly ShiftPoint[], { notes }: Stretch, place: (note: string) => number): ShiftPoint {
  const distance = ({ at }: ShiftPoint): number => Math.abs(place(notes[1]) - at);
  return points.reduce((best, point) => (distance(point) < distance(best) ? point : best));
}

/**
 * For a fingering that stretches beyond a hand, the best one within it that keeps the section's shifts: each shift stays between the same two notes, on
 * their strings and in their positions. Shifts that stand in the way give way, nearest to the stretch
 * first, and are named. Null where the fingering
 * lies within the hand already. Own pins stay hard. Model: the reach tables of `reachOf`. Oracle: `handFacts` of the result has no exceptional stretch.
 * Example: a fifth from 1 to 4 in first position, for a short fourth finger, becomes 1 and 1 on the next string.
 */
export function withinHand(instrument: Instrument, line: readonly LineNote[], tempo: number, fingering: PlainFingering, options: FingerLineOptions): WithinHand | null {
  const hand = options.hand ?? USUAL_HAND;
  const played: PlayedLine = { instrument, line, hand };
  const { steps } = handFacts(played, fingering);
  const beyond = beyondIn(steps);
  if (beyond.length === 0) return null;
  const index = new Map(steps.map(({ note }, i) => [note, i]));
  const own = options.pins ?? new Map<string, Pin>();
  let points = shiftPoints(steps);
  const lost: string[] = [];
  const least = bestWithin(played, tempo, { ...options, pins: own }, fingering.notes.length)?.stillBeyond.length ?? beyond.length;
  for (;;) {
    const found = bestWithin(played, tempo, { ...options, pins: pinsWith(own, points) }, fingering.notes.length);
    if (points.length === 0 || (found !== null && found.stillBeyond.length <= least)) {
      return { fingering: found?.fingering ?? fingering, beyond, kept: points.map(({ note }) => note), lost, stillBeyond: found?.stillBeyond ?? beyond };
    }
    const gone = new Set((found?.stillBeyond ?? beyond).map((stretch) => nearest(points, stretch, (note) => index.get(note)!)));
    lost.push(...points.filter((point) => gone.has(point)).map(({ note }) => note));
    points = points.filter((point) => !gone.has(point));
  }
}
