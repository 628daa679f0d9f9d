import { chanceFrom } from '../../../../core/bowing/stagger/chance.ts';
import type { Instant, StaggerPlayer, StaggerProblem } from '../../../../core/bowing/stagger/problem.ts';

/** Instants `step` seconds apart, `perBeat` to the beat and four beats to the measure. */
export function instantsOf(count: number, step: number, perBeat = 2): Instant[] {
  return Array.from({ length: count }, (_, i) => ({ time: Number(((i + 1) * step).toFixed(4)), onBarline: (i + 1) % (4 * perBeat) === 0, onBeat: (i + 1) % perBeat === 0, subdivision: i + 1, weight: 0 }));
}

/** Players front to back, outside before inside. */
export function playersOf(count: number, limit: number, comfortable: number): StaggerPlayer[] {
  return Array.from({ length: count }, (_, p) => ({ id: `${Math.floor(p / 2) + 1}${p % 2 ? 'i' : 'o'}`, desk: Math.floor(p / 2) + 1, seat: p % 2 ? 'inside' : 'outside', limit, comfortable, shifts: [] }));
}

/** A seeded problem small enough to be proved in a second or two: 2 to 6 players, 2 to 3 bows. */
export function smallProblem(seed: number): StaggerProblem {
  const chance = chanceFrom(seed + 1000);
  const count = 10 + Math.floor(chance() * 9);
  const step = 0.25 + 0.25 * chance();
  const duration = Number(((count + 1) * step).toFixed(4));
  const comfortable = Number((duration / (2 + chance())).toFixed(2));
  const instants = instantsOf(count, step).map((instant) => ({ ...instant, weight: Math.round(chance() * 4) / 4 }));
  const players = playersOf(2 + Math.floor(chance() * 5), Number((comfortable * 1.5).toFixed(2)), comfortable).map((player) => ({ ...player, shifts: chance() < 0.5 ? [] : [Math.floor(chance() * count)] }));
  return { instants, duration, players, start: 'down', end: chance() < 0.3 ? null : chance() < 0.5 ? 'down' : 'up' };
}
