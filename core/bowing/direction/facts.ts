import type { Part } from '../../music/part.ts';
import type { Seconds } from '../../music/seconds.ts';
import { quarters } from '../../music/time.ts';
import { bowDynamic, type Dynamic } from '../bowLength.ts';
import type { Direction, Stroke } from '../strokes.ts';
import { metricLevel, type MetricLevel } from '../../music/metre.ts';
import { swellOver, swellsOf } from './swells.ts';

/** What the costs of a bow's direction look at. */
export interface StrokeFacts {
  stroke: Stroke;
  /** Where its first sounding note begins in the measure. */
  level: MetricLevel;
  quarters: number;
  seconds: Seconds;
  /** Sounding notes under it, grace notes not counted. */
  notes: number;
  accented: boolean;
  staccato: boolean;
  /** Most notes at once at its beginning. */
  chord: number;
  dynamic: Dynamic;
  swell: 1 | 0 | -1;
  /** Silence before and after, in quarters and seconds; Infinity at the ends. */
  restBefore: number;
  restAfter: number;
  silence: Seconds;
  /** At least twice as long as the bows it touches before and after. */
  outweighs: boolean;
  /** The way of another voice that moves with it, where it has no sign of its own. */
  together?: Direction;
  /** Whole bows it needs at its dynamic and tempo. */
  bows: number;
}

/** How much longer a bow is that outweighs its neighbours: chosen, not measured. */
const LONGER = 1.9;

/** Quarters: thirds of a beat do not add up to the last digit, and that is no rest. */
const TOUCHING = 1e-6;

const ACCENTS = new Set(['accent', 'strong-accent']);
const SHORT = new Set(['staccato', 'staccatissimo', 'spiccato']);
const FORCED = /^(s?f+z|sf+p*|rfz?|fz|sfp+|fp)$/;

/**
 * Facts of the bows of one voice of a part; tremolos, which have no direction, are left out and count as silence.
 * `assumed`: dynamic where the part gives none yet; `bowsOf`: whole bows a stroke needs. Invariant: as many as there are bows without tremolo, in order of time.
 */
export function strokeFacts(part: Part, strokes: readonly Stroke[], assumed: Dynamic, bowsOf: (stroke: Stroke) => number): StrokeFacts[] {
  const swells = swellsOf(part);
  const measures = new Map(part.measures.map((measure) => [measure.ordinal, measure]));
  const facts: StrokeFacts[] = [];
  let [ended, printed]: [number, string | null] = [-Infinity, null];
  for (const stroke of strokes) {
    if (stroke.tremolo) {
      ended = -Infinity;
      continue;
    }
    const sounding = stroke.pieces.filter(({ event }) => !event.head.grace);
    const first = (sounding[0] ?? stroke.pieces[0]!).event;
    const last = stroke.pieces.at(-1)!.event;
    const from = stroke.begins.inside ? quarters(measures.get(stroke.begins.measure)!.start) + quarters(stroke.begins.at) : first.from;
    const to = stroke.cutAfter === null ? last.to : last.from + quarters(stroke.cutAfter);
    const measure = measures.get(stroke.begins.measure)!;
    const before = facts.at(-1);
    const rest = from - ended < TOUCHING ? 0 : from - ended;
    if (before) before.restAfter = rest;
    const { dynamic, articulations } = first.head;
    facts.push({
      stroke,
      level: metricLevel(measure, from - quarters(measure.start)),
      quarters: to - from,
      seconds: stroke.end - stroke.begins.second,
      notes: sounding.length,
      accented: articulations.some((name) => ACCENTS.has(name)) || (dynamic !== printed && dynamic !== null && FORCED.test(dynamic)),
      staccato: stroke.pieces.every(({ event }) => event.head.articulations.some((name) => SHORT.has(name))),
      chord: first.notes.length,
      dynamic: bowDynamic(dynamic, assumed),
      swell: swellOver(swells, from, to),
      restBefore: rest,
      restAfter: Infinity,
      silence: before && rest < Infinity ? Math.max(0, stroke.begins.second - before.stroke.end) : Infinity,
      outweighs: false,
      bows: bowsOf(stroke),
    });
    [ended, printed] = [to, last.head.dynamic];
  }
  facts.forEach((own, i) => {
    const [before, after] = [facts[i - 1], facts[i + 1]];
    const near = [...(before && own.restBefore === 0 ? [before] : []), ...(after && own.restAfter === 0 ? [after] : [])];
    own.outweighs = near.length > 0 && near.every((other) => own.quarters >= LONGER * other.quarters);
  });
  return facts;
}
