import { chance, type Chance } from '../../../support/chance.ts';

/**
 * How a section marks while it rehearses. From memory of rehearsals, no source: while the music goes on somebody marks, votes or says something every
 * half a minute; the conductor stops every minute or so, and then half of those who sit there do in the next seconds.
 */
const BETWEEN_MARKS = [20, 40] as const;
const BETWEEN_STOPS = [45, 90] as const;
const AT_A_STOP = { share: 0.5, within: 8 };
/** Strings of one orchestra. */
export const SECTIONS_OF_AN_ORCHESTRA = 5;

const within = ([from, to]: readonly [number, number], luck: Chance) => from + (to - from) * luck.next();

/** When the conductor of an orchestra stops, in seconds from the beginning. */
export function stopsOf(orchestra: number, seconds: number, seed: number): number[] {
  const luck = chance(seed * 1000 + orchestra);
  const stops: number[] = [];
  for (let at = luck.next() * BETWEEN_STOPS[0]; at < seconds; at += within(BETWEEN_STOPS, luck)) stops.push(at);
  return stops;
}

/** When one player does something, in order. */
export function actsOf(stops: readonly number[], seconds: number, luck: Chance): number[] {
  const acts = stops.flatMap((stop) => (luck.happens(AT_A_STOP.share) ? [stop + luck.next() * AT_A_STOP.within] : []));
  for (let at = luck.next() * BETWEEN_MARKS[1]; at < seconds; at += within(BETWEEN_MARKS, luck)) acts.push(at);
  return acts.filter((at) => at < seconds).toSorted((a, b) => a - b);
}
