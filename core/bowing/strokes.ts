import type { Note } from '../music/part.ts';
import type { Seconds } from '../music/seconds.ts';
import { type ExactTime, minus, plus, quarters } from '../music/time.ts';
import type { BowEvent, Voice } from './events.ts';

export type Direction = 'up' | 'down';

export const turned = (direction: Direction): Direction => (direction === 'down' ? 'up' : 'down');

/** The signs that decide where a bow begins and which way it goes. */
export interface BowSigns {
  bow?: Direction;
  bowPrinted?: true;
  changes: readonly ExactTime[];
  retake?: true;
  hooked?: true;
  slur?: 'split' | 'join';
}

/** A place where a bow begins. */
export interface Instant {
  measure: number;
  /** Quarters from the start of the measure. */
  at: ExactTime;
  second: Seconds;
  /** Index of its event in the voice, and whether it lies inside that event. */
  event: number;
  inside: boolean;
}

/** What is played on one bow. */
export interface Stroke {
  begins: Instant;
  end: Seconds;
  /** Index of the last event in the voice. */
  lastEvent: number;
  /** Where a change cuts the last event short: quarters after its start. */
  cutAfter: ExactTime | null;
  /** Sounding stretches under this bow, with the dynamic in force. */
  pieces: { event: BowEvent; seconds: Seconds }[];
  /** As marked or printed; null where nothing says it. */
  direction: Direction | null;
  printed: boolean;
  retake: boolean;
  /** Its last note carries a hook, so the next bow may go the same way. */
  hooked: boolean;
  /** Silence (or plucking) before it; Infinity at the beginning. */
  restBefore: Seconds;
  /** Many small bows: no direction and no length to count. */
  tremolo: boolean;
}

/** Silence that leaves time to bring the bow back without a sign. Chosen, not measured. */
export const RETAKE_REST: Seconds = 0.15;

const TOUCHING: Seconds = 1e-6;

export const isTremolo = ({ ornaments }: Note): boolean => ornaments.some((ornament) => ornament.startsWith('tremolo'));
const isPlucked = (event: BowEvent): boolean => event.head.pizzicato === true;

function instant(voice: Voice, index: number, after: ExactTime): Instant {
  const event = voice[index]!;
  const share = event.to > event.from ? quarters(after) / (event.to - event.from) : 0;
  return { measure: event.measure, at: after === 0 ? event.head.onset : plus(event.head.onset, after), second: event.start + share * (event.end - event.start), event: index, inside: share > 0 };
}

/** Changes that really lie on the note; one at its very beginning is the caller's to weigh. */
const changesInside = (event: BowEvent, signs: BowSigns): ExactTime[] =>
  signs.changes.filter((after) => quarters(after) > 0 && quarters(minus(event.head.duration, after)) > 0);

/** A slur or held note ends before this note and begins anew on it: by a split, or by a change as the note begins. */
export const splits = ({ slur, changes }: Pick<BowSigns, 'slur' | 'changes'>): boolean => slur === 'split' || changes.some((after) => quarters(after) === 0);

/** A retake or a sign of direction on a note under a slur begins a bow there, but not when only grace notes went before it: they begin the bow. */
function begins(before: BowEvent, event: BowEvent, onBefore: BowSigns, on: BowSigns, afterGraces: boolean): boolean {
  if (isPlucked(event) !== isPlucked(before) || isTremolo(event.head) !== isTremolo(before.head)) return true;
  if ((on.retake && !afterGraces) || splits(on)) return true;
  if (on.bow && !afterGraces && !on.hooked) return true;
  if (event.bound) return false;
  return event.start - before.end > TOUCHING || !(on.hooked || onBefore.slur === 'join');
}

/** The bows of the events from `first` to before `end`; a bow is known to begin at `first`, and sound to have ended at `sounded`. See `strokesOf`. */
export function strokesWithin(voice: Voice, signsOn: (note: string) => BowSigns, first: number, end: number, sounded: Seconds): Stroke[] {
  const strokes: Stroke[] = [];
  let current: Stroke | null = null;
  const open = (begin: Instant, event: BowEvent, signs: BowSigns | null): Stroke => {
    const stroke: Stroke = {
      begins: begin,
      end: begin.second,
      lastEvent: begin.event,
      cutAfter: null,
      pieces: [],
      direction: signs?.bow ?? null,
      printed: signs?.bowPrinted ?? false,
      retake: signs?.retake ?? false,
      hooked: false,
      restBefore: Math.max(0, begin.second - sounded),
      tremolo: isTremolo(event.head),
    };
    strokes.push(stroke);
    return stroke;
  };
  for (let index = first; index < end; index++) {
    const event = voice[index]!;
    if (isPlucked(event)) {
      current = null;
      continue;
    }
    const signs = signsOn(event.head.id);
    const before = voice[index - 1];
    const afterGraces = current !== null && current.pieces.every((piece) => piece.event.head.grace);
    if (!current || !before || begins(before, event, signsOn(before.head.id), signs, afterGraces)) current = open(instant(voice, index, 0), event, signs);
    else if (afterGraces) {
      if (signs.bow) [current.direction, current.printed] = [signs.bow, signs.bowPrinted ?? false];
      if (signs.retake) current.retake = true;
    }
    let from = event.start;
    for (const after of changesInside(event, signs)) {
      const next = instant(voice, index, after);
      current.pieces.push({ event, seconds: next.second - from });
      [current.end, current.lastEvent, current.cutAfter] = [next.second, index, after];
      [from, sounded] = [next.second, next.second];
      current = open(next, event, null);
    }
    current.pieces.push({ event, seconds: event.end - from });
    [current.end, current.lastEvent, current.hooked, sounded] = [event.end, index, signs.hooked ?? false, event.end];
  }
  return strokes;
}

/**
 * The bows of one voice for players who see `signsOn` (by note id). A bow takes the notes under one slur or tie, split, joined, hooked and changed as
 * marked; plucked notes take none and count as silence. Invariant: in order of time, no two overlap.
 * Example: a slurred pair with a change on its second note gives two strokes.
 */
export function strokesOf(voice: Voice, signsOn: (note: string) => BowSigns): Stroke[] {
  return strokesWithin(voice, signsOn, 0, voice.length, -Infinity);
}
