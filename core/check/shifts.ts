import { bowDynamic } from '../bowing/bowLength.ts';
import type { BowEvent } from '../bowing/events.ts';
import type { Stroke } from '../bowing/strokes.ts';
import { type HandPlace, handMoves, handPlaces } from '../hand/handPlace.ts';
import { openStringAt } from '../hand/place.ts';
import type { Semitones } from '../instruments/instrument.ts';
import type { Finger } from '../music/mark.ts';
import type { CheckContext, Players } from './context.ts';
import { soundingOf } from './context.ts';
import { shiftScore } from './exposure.ts';
import type { NoteMarks } from './seatMarks.ts';

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

/** A note as the hand comes to it and as it leaves it: a substitution may change the finger on the way. */
interface Stop {
  arriving: Stand | null;
  leaving: Stand | null;
}

const NOWHERE: Stop = { arriving: null, leaving: null };

function stopOn(part: CheckContext, event: BowEvent, { finger, substitution, string, harmonic }: NoteMarks): Stop {
  const midi = soundingOf(event);
  const { pitch } = event.head;
  const standWith = (used: Finger | undefined): Stand | null => {
    if (event.notes.length > 1 || !pitch || midi === undefined || harmonic || !used || used === 'thumb') return null;
    const places = handPlaces(part.instrument, { pitch, midi, finger: used, ...(string ? { string } : {}) });
    return places.length ? { event, places, finger: used } : null;
  };
  const arriving = standWith(finger);
  return { arriving, leaving: substitution === undefined ? arriving : standWith(substitution) };
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
function frees(part: CheckContext, event: BowEvent, { finger, harmonic }: NoteMarks): boolean {
  const midi = soundingOf(event);
  return finger !== undefined || harmonic !== undefined || event.notes.length > 1 || midi === undefined || openStringAt(part.instrument, midi) !== null;
}

/**
 * Reads the moves of the hand that players make under one bow, from fingered note to fingered note; a light estimate that stays silent where fingers
 * are not marked, over open strings and harmonics, in double stops and in thumb position. Players who share a fingering are worked out once.
 * Example: B4 with 1 to G5 with 3 on string 2 of a violin under one slur is a shift on the G.
 */
export function shiftReader(part: CheckContext): (players: Players) => Shift[] {
  const stops = new Map<NoteMarks, Stop>();
  const known = new Map<Stand, Map<Stand, Shift>>();
  const stopAt = (event: BowEvent, marks: NoteMarks): Stop => stops.get(marks) ?? stops.set(marks, stopOn(part, event, marks)).get(marks)!;
  const shiftBetween = (from: Stand, to: Stand): Shift => {
    const onward = known.get(from) ?? known.set(from, new Map()).get(from)!;
    return onward.get(to) ?? onward.set(to, leastShift(part, from, to)).get(to)!;
  };
  const under = (stroke: Stroke, marksOn: Players['marksOn']): Shift[] => {
    const shifts: Shift[] = [];
    let stand: Stand | null = null;
    for (const { event } of stroke.pieces) {
      const marks = marksOn(event.head.id);
      const { arriving, leaving } = marks.finger === undefined ? NOWHERE : stopAt(event, marks);
      if (arriving) {
        if (stand && stand.event !== event) shifts.push(shiftBetween(stand, arriving));
        stand = leaving;
      } else if (frees(part, event, marks)) stand = null;
    }
    return shifts.filter(({ score }) => score > 0);
  };
  const common = new Map<Stroke, Shift[]>();
  return ({ strokes, marksOn, own }) =>
    strokes.flat().flatMap((stroke) => {
      if (stroke.pieces.length < 2) return [];
      if (stroke.pieces.some(({ event }) => own.has(event.head.id))) return under(stroke, marksOn);
      return common.get(stroke) ?? common.set(stroke, under(stroke, marksOn)).get(stroke)!;
    });
}
