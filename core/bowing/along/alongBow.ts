import type { Instrument, Millimetres } from '../../instruments/instrument.ts';
import type { BowedStroke } from '../direction/inferDirections.ts';
import { distribute, type Drawn, GRID } from './distribute.ts';
import { type Travel, travels } from './travel.ts';

/** The outermost twentieths of the hair, at frog and tip, are left alone: chosen, not measured. */
const EDGE = 0.05;

export type Pace = 'usual' | 'faster' | 'slower';

export interface AlongStroke extends Travel, Drawn {
  /** mm/s. */
  speed: number;
  pace: Pace;
}

/** A bow for which the hair does not last. */
export interface ShortOfBow {
  /** Index in the bowing. */
  stroke: number;
  /**
   * runs-out: it needs more than the whole hair. wrong-end: at usual speeds the bow arrives where too little is left.
   * Example: long up-bow, short down-bow, long up-bow: the second long one begins at the wrong end.
   */
  kind: 'runs-out' | 'wrong-end';
  short: Millimetres;
  /** Bows since the hand last placed the bow that would be drawn faster or slower; empty where no distribution helps. */
  fix: { stroke: number; pace: Exclude<Pace, 'usual'> }[];
}

export interface AlongBow {
  strokes: AlongStroke[];
  short: ShortOfBow[];
}

/** A bow's length counts as usual within this share of it: chosen, not measured. */
const SAME = 0.15;

function paceOf({ usual }: Travel, { from, to }: Drawn): Pace {
  const off = Math.abs(to - from) - usual;
  if (Math.abs(off) <= Math.max(GRID, SAME * usual)) return 'usual';
  return off > 0 ? 'faster' : 'slower';
}

/** Hair missing when every bow is drawn at its usual speed as far as the hair goes; the bow is placed where the distribution would place it. */
function missing(all: readonly Travel[], drawn: readonly Drawn[], low: Millimetres, high: Millimetres): Millimetres[] {
  let place = low;
  return all.map(({ direction, usual, least, placed }, i) => {
    if (placed) {
      // Who does not look ahead places the bow at the end from which this one can be drawn out.
      place = direction === 'down' ? Math.min(drawn[i]!.from, Math.max(low, high - usual)) : Math.max(drawn[i]!.from, Math.min(high, low + usual));
    }
    const room = direction === 'down' ? high - place : place - low;
    place += (direction === 'down' ? 1 : -1) * Math.min(room, usual);
    return Math.max(0, least - room);
  });
}

/**
 * Where the bow is along its hair through a bowing, in mm from the frog, and where the hair does not last. Each bow's length follows from its seconds, its
 * dynamic (the section's seconds a bow) and its stroke; the distribution keeps all as near as can be to their usual lengths, slow or fast where it has to.
 * Example: two seconds at mf on a violin, down from 30 mm, end at 385.
 */
export function alongBow(strokes: readonly BowedStroke[], instrument: Instrument): AlongBow {
  const [low, high] = [EDGE * instrument.bowHair, (1 - EDGE) * instrument.bowHair];
  const all = travels(strokes, instrument);
  const drawn = distribute(all, low, high);
  const along = all.map((travel, i): AlongStroke => ({ ...travel, ...drawn[i]!, speed: travel.seconds > 0 ? Math.abs(drawn[i]!.to - drawn[i]!.from) / travel.seconds : 0, pace: paceOf(travel, drawn[i]!) }));
  const lacking = missing(all, drawn, low, high);
  const short: ShortOfBow[] = [];
  let begun = 0;
  along.forEach((stroke, i) => {
    if (stroke.placed) begun = i;
    if (stroke.least > high - low) short.push({ stroke: stroke.stroke, kind: 'runs-out', short: stroke.least - (high - low), fix: [] });
    else if (lacking[i]! > GRID) {
      const holds = Math.abs(stroke.to - stroke.from) >= stroke.least - GRID;
      const fix = holds ? along.slice(begun, i + 1).flatMap(({ stroke: index, pace }) => (pace === 'usual' ? [] : [{ stroke: index, pace }])) : [];
      short.push({ stroke: stroke.stroke, kind: 'wrong-end', short: lacking[i]!, fix });
    }
  });
  return { strokes: along, short };
}
