import { bowDynamic } from '../bowing/bowLength.ts';
import type { BowEvent } from '../bowing/events.ts';
import type { Stroke } from '../bowing/strokes.ts';
import { type HandPlace, handMoves, handPlaces } from '../hand/handPlace.ts';
import { openStringAt } from '../hand/place.ts';
import type { Semitones } from '../instruments/instrument.ts';
import type { CheckContext, Players } from './context.ts';
import { soundingOf } from './context.ts';
import { shiftScore } from './exposure.ts';

/** A move of the hand under one bow, onto a fingered note. */
export interface Shift {
  event: BowEvent;
  from: BowEvent;
  moves: Semitones;
  /** As exposed as it is when both partners make it. */
  score: number;
}

interface Stand {
  event: BowEvent;
  places: HandPlace[];
  finger: number;
}

function stoppedWith(part: CheckContext, players: Players, event: BowEvent, arriving: boolean): Stand | null {
  const { finger, substitution, string, harmonic } = players.marksOn(event.head.id);
  const used = arriving ? finger : (substitution ?? finger);
  const midi = soundingOf(event);
  const { pitch } = event.head;
  if (event.notes.length > 1 || !pitch || midi === undefined || harmonic || !used || used === 'thumb') return null;
  const places = handPlaces(part.instrument, { pitch, midi, finger: used, ...(string ? { string } : {}) });
  return places.length ? { event, places, finger: used } : null;
}

/** The least exposed reading over all strings the marks leave open, so that nothing is claimed that a choice of string would avoid. */
function leastShift(part: CheckContext, from: Stand, to: Stand): Shift {
  const dynamic = bowDynamic(to.event.head.dynamic, part.settings.assumedDynamic);
  const readings = from.places.flatMap((a) =>
    to.places.map((b) => {
      const moves = handMoves(part.instrument, a, b);
      const smallStep = Math.abs(soundingOf(to.event)! - soundingOf(from.event)!) === 1 && (a.string === b.string || from.finger === to.finger);
      return { moves, score: shiftScore({ moves, covered: false, changesString: a.string !== b.string, smallStep, underSlur: true, dynamic, bothPartners: true }) };
    }),
  );
  const least = readings.reduce((best, reading) => (reading.score < best.score ? reading : best));
  return { event: to.event, from: from.event, ...least };
}

/** An unmarked note that may be played open frees the hand, as does a mark that is no stopped finger. */
function frees(part: CheckContext, players: Players, event: BowEvent): boolean {
  const { finger, harmonic } = players.marksOn(event.head.id);
  const midi = soundingOf(event);
  return finger !== undefined || harmonic !== undefined || event.notes.length > 1 || midi === undefined || openStringAt(part.instrument, midi) !== null;
}

function shiftsUnder(part: CheckContext, players: Players, stroke: Stroke): Shift[] {
  const shifts: Shift[] = [];
  let stand: Stand | null = null;
  for (const { event } of stroke.pieces) {
    const arrival = stoppedWith(part, players, event, true);
    if (arrival) {
      if (stand && stand.event !== event) shifts.push(leastShift(part, stand, arrival));
      stand = stoppedWith(part, players, event, false);
    } else if (frees(part, players, event)) stand = null;
  }
  return shifts.filter(({ score }) => score > 0);
}

/**
 * Moves of the hand that players with these marks make under one bow, from fingered note to fingered note; a light estimate that stays silent where
 * fingers are not marked, over open strings and harmonics, in double stops and in thumb position.
 * Example: B4 with 1 to G5 with 3 on string 2 of a violin under one slur is a shift on the G.
 */
export function shiftsOf(part: CheckContext, players: Players): Shift[] {
  return players.strokes.flat().flatMap((stroke) => shiftsUnder(part, players, stroke));
}
