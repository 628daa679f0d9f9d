import { areNeighbours } from './costs/neighbour.ts';
import { evenShare, STRETCH } from './costs/evenness.ts';
import { costOfChange } from './costs/perChange.ts';
import type { StaggerPlayer, StaggerProblem, StaggerSettings } from './problem.ts';
import { crowdAllowed, SAME_TIME } from './problem.ts';
import type { Strokes } from './strokes.ts';
import { strokesFor } from './strokes.ts';
import type { Windows } from './windows.ts';
import { closerThan, runsOf, windowsOf } from './windows.ts';

/** One player as the search sees them. */
export interface Seated {
  strokes: Strokes;
  /** Points of a change at each usable instant. */
  change: Float64Array;
  partner: number;
  neighbours: readonly number[];
}

/** The problem with everything looked up that the search asks for again and again. */
export interface Model {
  problem: StaggerProblem;
  settings: StaggerSettings;
  /** Usable instants by their index in the problem: inside the passage, neither at its start nor at its end. */
  usable: readonly number[];
  players: readonly Seated[];
  /** Windows few may change in, and how many. */
  crowd: Windows;
  allowed: number;
  /** Windows only one of a desk may change in. */
  desk: Windows;
  /** Pairs of usable instants of one subdivision that no window covers: only where ids of subdivisions come back later. */
  faraway: readonly (readonly [number, number])[];
  /** Stretch of each usable instant, for evenness. */
  stretch: Int32Array;
  stretches: number;
  share: number;
}

function sameDesk(players: readonly StaggerPlayer[], index: number): number {
  return players.findIndex((other, i) => i !== index && other.desk === players[index]!.desk);
}

function farawayPairs(subdivisions: readonly (string | number)[], desk: Windows): [number, number][] {
  const seen = new Map<string | number, number[]>();
  const pairs: [number, number][] = [];
  subdivisions.forEach((subdivision, i) => {
    const earlier = seen.get(subdivision) ?? [];
    for (const j of earlier) if (desk.last[desk.to[j]!]! < i) pairs.push([j, i]);
    seen.set(subdivision, [...earlier, i]);
  });
  return pairs;
}

/**
 * Looks a problem up once for the search.
 * @returns the model; player by player in the problem's order
 * Example: `modelOf(problem, STAGGER_DEFAULTS).allowed` is 1 below sixteen players.
 */
export function modelOf(problem: StaggerProblem, settings: StaggerSettings): Model {
  const { instants, players, duration } = problem;
  const usable = instants.flatMap(({ time }, i) => (time > SAME_TIME && time < duration - SAME_TIME ? [i] : []));
  const times = usable.map((i) => instants[i]!.time);
  const subdivisions = usable.map((i) => instants[i]!.subdivision);
  const desk = windowsOf([...closerThan(times, settings.partnerApart), ...runsOf(subdivisions)], usable.length);
  const strokes = new Map<string, Strokes>();
  return {
    problem,
    settings,
    usable,
    crowd: windowsOf(closerThan(times, settings.crowdWindow), usable.length),
    allowed: crowdAllowed(players.length, settings.crowdShare),
    desk,
    faraway: farawayPairs(subdivisions, desk),
    stretch: Int32Array.from(times, (time) => Math.floor(time / STRETCH + SAME_TIME)),
    stretches: Math.floor(duration / STRETCH) + 1,
    share: evenShare(players),
    players: players.map((player, p) => {
      const key = `${player.limit} ${player.comfortable}`;
      const own = strokes.get(key) ?? strokesFor(times, problem, player);
      strokes.set(key, own);
      const partner = sameDesk(players, p);
      return {
        strokes: own,
        change: Float64Array.from(usable, (i) => {
          const cost = costOfChange(instants[i]!, i, player, players[partner]);
          return cost.changes + cost.barline + cost.beat + cost.peak + cost.unhidden + cost.partnerShift;
        }),
        partner,
        neighbours: players.flatMap((other, q) => (areNeighbours(player, other) ? [q] : [])),
      };
    }),
  };
}
