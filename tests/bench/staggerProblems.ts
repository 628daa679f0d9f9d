import { chanceFrom } from '../../core/bowing/stagger/chance.ts';
import type { Instant, StaggerPlayer, StaggerProblem } from '../../core/bowing/stagger/problem.ts';

/** Seconds of one bow, comfortable and at most, from pp to f: the default table a section starts with. */
const BOWS = [[8, 12], [6, 9], [4.5, 7], [3.5, 5.5], [2.5, 4]] as const;

/** A seeded problem: 4 to 40 players, 2 to 16 bows; every other one with shifts and absent players. */
export function problemOf(seed: number): StaggerProblem {
  const chance = chanceFrom(seed * 7919 + 17);
  const among = <T>(list: readonly T[]) => list[Math.floor(chance() * list.length)]!;
  const uneven = seed % 2 === 1;
  const size = 4 + Math.floor(chance() * 37);
  const bows = 2 + Math.floor(chance() * 15);
  const [comfortable, limit] = among(BOWS);
  const beats = among([3, 4]);
  const beat = 60 / (50 + Math.floor(chance() * 70));
  const parts = among([2, 3, 4]);
  const step = beat / parts;
  const count = Math.max(4, Math.round((bows * comfortable) / step));
  const peak = Math.floor(chance() * count);
  const instants = Array.from({ length: count - 1 }, (_, i): Instant => {
    const at = i + 1;
    return { time: Number((at * step).toFixed(4)), onBarline: at % (beats * parts) === 0, onBeat: at % parts === 0, subdivision: at, weight: Math.max(0, Number((1 - Math.abs(at - peak) / (2 * parts)).toFixed(2))) };
  });
  const players = Array.from({ length: size }, (_, p): StaggerPlayer => {
    const personal = uneven ? 0.9 + 0.2 * chance() : 1;
    const shifts = uneven ? instants.flatMap((_, i) => (chance() < 0.06 ? [i] : [])) : [];
    return { id: `${Math.floor(p / 2) + 1}${p % 2 ? 'i' : 'o'}`, desk: Math.floor(p / 2) + 1, seat: p % 2 ? 'inside' : 'outside', limit: Number((limit * personal).toFixed(2)), comfortable: Number((comfortable * personal).toFixed(2)), shifts };
  }).filter(() => !uneven || chance() > 0.1);
  return { instants, duration: Number((count * step).toFixed(4)), players, start: among(['down', 'up'] as const), end: among(['down', 'up', null] as const) };
}
