import type { Instrument, Millimetres } from '../../instruments/instrument.ts';
import type { Mark } from '../../music/mark.ts';
import type { Part } from '../../music/part.ts';
import type { Seconds, TempoMap } from '../../music/seconds.ts';
import type { ExactTime } from '../../music/time.ts';
import { alongBow, type AlongStroke, type ShortOfBow } from '../along/alongBow.ts';
import { bowUsed, type BowTable, type Dynamic } from '../bowLength.ts';
import { bowEvents } from '../events.ts';
import { type BowSigns, type Direction, strokesOf } from '../strokes.ts';
import { bowingMarks } from './bowingMarks.ts';
import { strokeFacts } from './facts.ts';
import { type BowedStroke, type Bowing, inferDirections, reasonOf } from './inferDirections.ts';
import { voicesTogether } from './together.ts';

export interface BowingRequest {
  part: Part;
  instrument: Instrument;
  tempo: TempoMap;
  /** Marks and printed signs in force, by note id. */
  signsOn: (note: string) => BowSigns;
  table: BowTable;
  assumedDynamic: Dynamic;
  /** Ordinals, both included. */
  measures: { from: number; to: number };
  /** Alternatives, from 1. */
  best: number;
}

/** A bow as the command line prints it and the browser shows it. */
export interface PlainStroke {
  /** Notes under it. */
  notes: string[];
  measure: number;
  at: ExactTime;
  /** Seconds from the start of the part. */
  begins: Seconds;
  ends: Seconds;
  direction: Direction;
  marked?: true;
  split?: true;
  /** By a lift, or hooked onto the bow before. */
  repeats?: true;
  reason: string;
}

export interface PlainBowing {
  voice: number;
  cost: number;
  terms: Record<string, number>;
  strokes: PlainStroke[];
  marks: Mark[];
  /** Where each bow begins and ends, in mm from the frog; a split slur is two bows. `stroke` counts in `strokes`. */
  along: { stroke: number; from: Millimetres; to: Millimetres; speed: number; pace: AlongStroke['pace'] }[];
  short: ShortOfBow[];
}

const rounded = (value: number): number => Math.round(value * 1e4) / 1e4;

function hairOf({ strokes }: Bowing, instrument: Instrument): Pick<PlainBowing, 'along' | 'short'> {
  const { strokes: along, short } = alongBow(strokes, instrument);
  return {
    along: along.map(({ stroke, from, to, speed, pace }) => ({ stroke, from: rounded(from), to: rounded(to), speed: Math.round(speed), pace })),
    short: short.map((one) => ({ ...one, short: Math.round(one.short) })),
  };
}

function plainStroke(bowed: BowedStroke): PlainStroke {
  const { stroke } = bowed.facts;
  return {
    notes: stroke.pieces.map(({ event }) => event.head.id),
    measure: stroke.begins.measure,
    at: stroke.begins.at,
    begins: rounded(stroke.begins.second),
    ends: rounded(stroke.end),
    direction: bowed.direction,
    ...(stroke.direction === null ? {} : { marked: true as const }),
    ...(bowed.split ? { split: true as const } : {}),
    ...(bowed.repeats ? { repeats: true as const } : {}),
    reason: reasonOf(bowed),
  };
}

/**
 * Up to `best` bowings of each voice in some measures of a part, cheapest first, each with its reason a bow, the marks that would say it and its
 * place along the hair. A bow of a later voice that moves together with one of an earlier voice goes as that does in its cheapest bowing.
 * Costs have no unit (log odds of the performers they were fitted on). Tremolos have no direction and are left out.
 * Example: one measure of four quarters gives down, up, down, up.
 */
export function partBowings({ part, instrument, tempo, signsOn, table, assumedDynamic, measures, best }: BowingRequest): PlainBowing[] {
  const byOrdinal = new Map(part.measures.map((measure) => [measure.ordinal, measure]));
  const voices = bowEvents(part, tempo).map((voice) => {
    const all = strokeFacts(part, strokesOf(voice, signsOn), assumedDynamic, (stroke) => bowUsed(stroke, instrument, table, assumedDynamic));
    return all.filter(({ stroke }) => stroke.begins.measure >= measures.from && stroke.begins.measure <= measures.to);
  });
  const together = voicesTogether();
  for (const { stroke } of voices.flat()) together.tell(stroke, stroke.direction);
  return voices.flatMap((facts, index) => {
    const found = inferDirections(facts.map((own) => together.follow(own)), best);
    for (const { facts: { stroke }, direction } of found[0]?.strokes ?? []) together.tell(stroke, direction);
    return found.map((bowing) => ({
      ...hairOf(bowing, instrument),
      voice: index,
      cost: rounded(bowing.cost),
      terms: Object.fromEntries(Object.entries(bowing.terms).map(([name, cost]) => [name, rounded(cost)])),
      strokes: bowing.strokes.map(plainStroke),
      marks: bowingMarks(bowing, byOrdinal),
    }));
  });
}
